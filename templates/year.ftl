<#-- A year on one side: what was put up, eaten and lost, how long the stock lasts, what to put up next.
  household  text, may be empty     year  text     asOf  ISO date
  putUp, eaten, lost, stock   jars in all     unrecorded  jars planned, results not recorded
  foods      product, jar (size, may be empty), before (left from earlier years), putUp, eaten, lost, recanned,
             stock, doubtful, toThrowAway, and, where told, weeks
             (that the stock lasts) and next (jars to put up next year); told is no where too little is recorded
  bars       the foods with the most jars, the same values
  months     name, putUp, eaten, lost: the twelve months
  losses     why, jars: the commonest first
  leastJars, leastDays   less than these tells nothing -->
<#macro named food>${food.product}<#if food.jar?has_content>, ${count("jar." + food.jar, 1)}</#if></#macro>
<#assign most = 1/>
<#list bars as f><#list [f.putUp, f.eaten, f.stock] as n><#if (n > most)><#assign most = n/></#if></#list></#list>
<#assign peak = 1/>
<#list months as m><#list [m.putUp, m.eaten, m.lost] as n><#if (n > peak)><#assign peak = n/></#if></#list></#list>
<sheet size="10">
  <section margin="12" left="18">
    <header size="9">
      <columns widths="* *">
        <column>${word("year.title", {"year": year})}<#if household?has_content> · ${household}</#if></column>
        <column align="right">${word("shelf.as-of", {"date": day("long", asOf)})} · ${word("page.of-before")} <page/> ${word("page.of")} <pages/></column>
      </columns>
      <rule line="1.5" around="1"/>
    </header>
    <body>
      <heading size="20">${word("year.title", {"year": year})}</heading>
      <readings figure="22">
        <reading value="${number(putUp)}" caption="${word("year.put-up")}"/>
        <reading value="${number(eaten)}" caption="${word("year.eaten")}"/>
        <reading value="${number(lost)}" caption="${word("year.lost")}"/>
        <reading value="${number(stock)}" caption="${word("year.stock")}"/>
      </readings>
      <#if !foods?has_content>
      <para before="3">${word("year.nothing")}</para>
      <#else>
      <heading level="2" size="13">${word("year.by-food")}</heading>
      <drawing w="178" h="${7 + bars?size * 9.8}" alt="${word("year.by-food")}.<#list bars as f> ${f.product}: ${word("year.put-up")} ${number(f.putUp)}, ${word("year.eaten")} ${number(f.eaten)}, ${word("year.stock")} ${number(f.stock)}.</#list>">
        <rect x="62" y="0.6" w="6" h="2.8" line="0.8" hatch="1.4"/><text x="70" y="3.4" size="8.5">${word("year.put-up")}</text>
        <rect x="98" y="0.6" w="6" h="2.8" fill="black"/><text x="106" y="3.4" size="8.5">${word("year.eaten")}</text>
        <rect x="134" y="0.6" w="6" h="2.8" line="0.8"/><text x="142" y="3.4" size="8.5">${word("year.stock")}</text>
        <#list bars as f>
        <#assign y = 6.5 + f?index * 9.8/>
        <text x="0" y="${y}" w="59" h="9" size="10" min="6.5" valign="middle" align="right"><@named f/></text>
        <line x1="62" y1="${y - 0.3}" x2="62" y2="${y + 9.3}" line="1"/>
        <#if (f.putUp > 0)><rect x="62" y="${y}" w="${104 * f.putUp / most}" h="2.8" line="0.8" hatch="1.4"/><text x="${63.2 + 104 * f.putUp / most}" y="${y + 2.6}" size="8" b="yes">${number(f.putUp)}</text></#if>
        <#if (f.eaten > 0)><rect x="62" y="${y + 3.1}" w="${104 * f.eaten / most}" h="2.8" fill="black"/><text x="${63.2 + 104 * f.eaten / most}" y="${y + 5.7}" size="8" b="yes">${number(f.eaten)}</text></#if>
        <#if (f.stock > 0)><rect x="62" y="${y + 6.2}" w="${104 * f.stock / most}" h="2.8" line="0.8"/><text x="${63.2 + 104 * f.stock / most}" y="${y + 8.8}" size="8" b="yes">${number(f.stock)}</text></#if>
        </#list>
      </drawing>
      <heading level="2" size="13">${word("year.by-month")}</heading>
      <drawing w="178" h="33" alt="${word("year.by-month")}.<#list months as m> ${m.name}: ${word("year.put-up")} ${number(m.putUp)}, ${word("year.eaten")} ${number(m.eaten)}, ${word("year.lost")} ${number(m.lost)}.</#list>">
        <rect x="0" y="0.6" w="6" h="2.8" line="0.8" hatch="1.4"/><text x="8" y="3.4" size="8.5">${word("year.put-up")}</text>
        <rect x="36" y="0.6" w="6" h="2.8" fill="black"/><text x="44" y="3.4" size="8.5">${word("year.eaten")}</text>
        <rect x="72" y="0.6" w="6" h="2.8" line="0.8" fill="35%"/><text x="80" y="3.4" size="8.5">${word("year.lost")}</text>
        <line x1="0" y1="28" x2="178" y2="28" line="1"/>
        <#list months as m>
        <#assign x = m?index * 14.8/>
        <#if (m.putUp > 0)><#assign h = 18 * m.putUp / peak/><rect x="${x + 1.2}" y="${28 - h}" w="3.8" h="${h}" line="0.8" hatch="1.4"/><text x="${x + 3.1}" y="${27 - h}" align="center" size="<#if (peak > 99)>6.5<#else>7.5</#if>" b="yes">${number(m.putUp)}</text></#if>
        <#if (m.eaten > 0)><#assign h = 18 * m.eaten / peak/><rect x="${x + 5.4}" y="${28 - h}" w="3.8" h="${h}" fill="black"/><text x="${x + 7.3}" y="${27 - h}" align="center" size="<#if (peak > 99)>6.5<#else>7.5</#if>" b="yes">${number(m.eaten)}</text></#if>
        <#if (m.lost > 0)><#assign h = 18 * m.lost / peak/><rect x="${x + 9.6}" y="${28 - h}" w="3.8" h="${h}" line="0.8" fill="35%"/><text x="${x + 11.5}" y="${27 - h}" align="center" size="<#if (peak > 99)>6.5<#else>7.5</#if>" b="yes">${number(m.lost)}</text></#if>
        <text x="${x + 7.3}" y="32" align="center" size="8.5">${m.name}</text>
        </#list>
      </drawing>
      <table columns="* 14 14 16 16 12 12 13 18 13" align-columns="left right right right right right right right right right" line="0.5" size="9" <#if (foods?size > 8)>pad="0.5"<#else>pad="0.9"</#if>>
        <head><cell>${word("shelf.column.product")}</cell><cell>${word("year.before")}</cell><cell>${word("year.put-up")}</cell><cell>${word("year.eaten")}</cell><cell>${word("year.lost")}</cell><cell>${word("year.stock")}</cell><cell>${word("year.doubtful")}</cell><cell>${word("year.throw-away")}</cell><cell>${word("year.weeks")}</cell><cell>${word("year.next")}</cell></head>
        <#list foods as f>
        <row><cell><@named f/><#if (f.recanned > 0)> <span size="8.5" ink="65%">(${count("year.recanned", f.recanned)})</span></#if></cell><cell>${number(f.before)}</cell><cell>${number(f.putUp)}</cell><cell>${number(f.eaten)}</cell><cell>${number(f.lost)}</cell><cell>${number(f.stock)}</cell><cell>${number(f.doubtful)}</cell><cell><#if (f.toThrowAway > 0)><b>${number(f.toThrowAway)}</b><#else>0</#if></cell><cell><#if f.told>${number(f.weeks)}<#else>?</#if></cell><cell><#if f.told><b>${number(f.next)}</b><#else>?</#if></cell></row>
        </#list>
      </table>
      <#if losses?has_content>
      <para before="2"><b>${word("year.why-lost")}</b> <#list losses as l>${number(l.jars)} ${l.why}<#sep>; </#list>.</para>
      </#if>
      <#if (unrecorded > 0)>
      <para before="2">${count("year.unrecorded", unrecorded)}</para>
      </#if>
      <para size="8" before="2">${word("year.accounts")} ${word("year.rule", {"jars": number(leastJars), "days": number(leastDays)})}</para>
      </#if>
    </body>
  </section>
</sheet>
