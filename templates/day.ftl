<#-- The day by the clock.
  household, paper (w, h in mm)
  days  list of: date, start, finish, finishRange (two clock times), jars
    loads    name, product, pack, jars, minutes, canner, out, testFrom
    lanes    captions, from left to right
    sides    minutes, ticks (at, clock, hour, day at midnight), blocks (lane, from, to, exact, clock, text, minutes), rushes (from, to)
    tasks    day (where it is another than the row before's), start, end, load, what, minutes, exact, process, hands
    gather   what, amount, note
    notices  sentences -->
<#assign across = paper.w - 20 - 12>
<#assign ruler = 15>
<#-- Short enough for two columns on one side. -->
<#macro brief tasks>
<table columns="6.5 11.5 12 * 8.5 12" line="0.6" pad="0.65" around="0.5" size="9.5">
  <head><cell/><cell>${word("day.column.time")}</cell><cell>${word("day.column.load")}</cell><cell>${word("day.column.what")}</cell><cell>${word("day.column.min")}</cell><cell>${word("day.column.real")}</cell></head>
  <#list tasks as t><@newDay t/><row<#if t.process> tint="14%"</#if>><cell><box size="4.2" line="1"/></cell><cell>${t.start}</cell><cell>${t.load}</cell><cell><@task t/></cell><cell><@minutes t/></cell><cell/></row></#list>
</table>
</#macro>

<#macro full tasks>
<table columns="9 26 14 * 18 26" line="0.6" pad="0.9">
  <head><cell/><cell>${word("day.column.time")}</cell><cell>${word("day.column.load")}</cell><cell>${word("day.column.what")}</cell><cell>${word("day.column.min")}</cell><cell>${word("day.column.real")}</cell></head>
  <#list tasks as t><@newDay t/><row<#if t.process> tint="14%"</#if>><cell><box size="4.5" line="1"/></cell><cell>${t.start}–${t.end}</cell><cell>${t.load}</cell><cell><@task t/></cell><cell><@minutes t/></cell><cell/></row></#list>
</table>
</#macro>

<#macro newDay t><#if t.day?has_content><row><cell/><cell/><cell/><cell><b>${t.day}</b></cell><cell/><cell/></row></#if></#macro>
<#macro task t><#if t.process><b>${t.what}</b><#else>${t.what}</#if><#if t.hands gt 1> · ${count("day.people", t.hands)}</#if></#macro>
<#macro minutes t><#if t.process><b>${t.minutes}</b><#elseif t.exact>${t.minutes}<#else>~${t.minutes}</#if></#macro>

<#macro need gather>
<table columns="6.5 * *" line="0.6" pad="0.65" around="0.5" size="9.5">
  <head><cell/><cell>${word("day.column.need")}</cell><cell>${word("day.column.amount")}</cell></head>
  <#list gather as g><row><cell><box size="4.2" line="1"/></cell><cell><b>${g.what?cap_first}</b><#if g.note != ""><br/>${g.note}</#if></cell><cell><#list g.amount?split(" ") as w><#if w?contains("/")><frac>${w}</frac><#else>${w}</#if><#sep> </#list></cell></row></#list>
</table>
</#macro>

<sheet size="10.5">
<#-- What a long name takes in the header besides its first line. -->
<#assign above = 4 * ((word("day.title")?length + household?length) / 48)?floor>
<#list days as d>
  <section margin="12" left="20">
    <header size="9">
      <columns widths="* *"><column>${word("day.title")}<#if household?has_content> · ${household}</#if></column><column align="right">${day("long", d.date)} · ${word("page.of-before")} <page/> ${word("page.of")} <pages/></column></columns>
      <rule line="1.5" around="1"/>
    </header>
    <body>
      <#list d.sides as side>
      <#if side?index gt 0><break/></#if>
      <#assign lane = (across - ruler) / d.lanes?size, top = 9, down = paper.h - above - ((side?index == 0)?then(80, 52)), scale = (down - top) / side.minutes>
      <#if scale gt 0.8><#assign scale = 0.8></#if>
      <#if side?index == 0>
      <columns widths="* 78" around="0" valign="bottom"><column><heading size="20" before="0" after="0">${day("long", d.date)}</heading></column>
      <column align="right"><para size="13" b="yes" before="0" after="0">${word("day.from-to", {"start": d.start, "finish": d.finish})}</para></column></columns>
      <para size="9.5" before="0.5" after="1.5">${count("day.jars", d.jars)} · ${word("day.range", {"least": d.finishRange[0], "most": d.finishRange[1]})}</para>
      </#if>
      <drawing w="${across}" h="${top + side.minutes * scale + 3}" alt="${word("day.picture-alt")}">
        <#list d.lanes as head>
        <text x="${ruler + head?index * lane + 0.8}" y="0" w="${lane - 1.6}" h="7.5" size="9.5" min="6" b="yes" align="center" valign="bottom">${head}</text>
        <line x1="${ruler + head?index * lane}" y1="${top}" x2="${ruler + head?index * lane}" y2="${top + side.minutes * scale}" line="0.5" ink="45%"/>
        </#list>
        <#list side.ticks as t>
        <line x1="${ruler - (t.hour?then(3, 1.5))}" y1="${top + t.at * scale}" x2="${across}" y2="${top + t.at * scale}" line="0.5" ink="${t.hour?then('45%', '25%')}" <#if !t.hour>dash="1"</#if>/>
        <text x="0" y="${top + t.at * scale + 1.3}" size="${t.hour?then(10.5, 8.5)}" b="${t.hour?string('yes', 'no')}">${t.clock}</text>
        <#if t.day?has_content><text x="0" y="${top + t.at * scale + 4.6}" size="7.5" b="yes">${t.day}</text></#if>
        </#list>
        <#list side.rushes as r><rect x="${ruler - 1.6}" y="${top + r.from * scale}" w="1.2" h="${(r.to - r.from) * scale}" fill="black"/></#list>
        <#list side.blocks as b>
        <#assign x = ruler + b.lane * lane + 1.2, y = top + b.from * scale, w = lane - 2.4, h = [(b.to - b.from) * scale, 0.8]?max>
        <#if b.exact><rect x="${x}" y="${y}" w="${w}" h="${h}" fill="black"/>
        <#else><rect x="${x}" y="${y}" w="${w}" h="${h}" fill="white" line="0.6"/><rect x="${x}" y="${y}" w="2.2" h="${h}" hatch="1.1" line="0.6"/></#if>
        <#if b.clock><sign x="${x + w - 4.2}" y="${y + 0.6}" size="3.4" name="clock" ink="${b.exact?then('white', 'black')}"/></#if>
        <#assign ink = b.exact?then('white', 'black'), room = w - (b.clock?then(7.5, 3.4))>
        <#if h gte 3><text x="${x + 3}" y="${y + 0.1}" w="${room}" h="${h - 0.2}" size="9" min="6" ink="${ink}" valign="${(h gt 8)?then('top', 'middle')}"><part b="${b.exact?string('yes','no')}">${b.text}</part><part drop="1">${b.minutes} ${word("day.column.min")}</part></text>
        <#elseif h gte 1.7><text x="${x + 3}" y="${y + h / 2 - 1.4}" w="${room}" h="2.8" size="6.5" min="6" wrap="no" valign="middle"><part drop="1">${b.text}</part></text></#if>
        </#list>
      </drawing>
      </#list>
      <drawing w="${across}" h="6" alt="" around="1">
        <rect x="0" y="1" w="6" h="4" fill="black"/><text x="8" y="4.4" size="9">${word("day.legend.exact")}</text>
        <rect x="52" y="1" w="6" h="4" fill="white" line="0.6"/><rect x="52" y="1" w="2.2" h="4" hatch="1.1" line="0.6"/><text x="60" y="4.4" size="9">${word("day.legend.estimate")}</text>
        <sign x="82" y="1" size="4" name="clock"/><text x="88" y="4.4" size="9">${word("day.legend.clock")}</text>
        <rect x="119" y="1" w="1.2" h="4" fill="black"/><text x="122" y="4.4" size="9">${word("day.legend.rush")}</text>
      </drawing>
      <para size="9.5" b="yes" before="0.5" after="0">${word("day.caution")}</para>
      <break/>
      <heading size="16" before="0">${word("day.steps")}</heading>
      <#if d.tasks?size lte 44>
      <#assign half = ((d.tasks?size + 1) / 2)?floor>
      <columns widths="* *" gap="6" around="0"><column><@brief d.tasks[0..<half]/></column><column><@brief d.tasks[half..]/></column></columns>
      <#else><@full d.tasks/></#if>
      <heading level="2" size="13">${word("day.loads")}</heading>
      <table columns="11 * 22 24 17 18 28" line="0.6" pad="0.65" around="0.5" size="9.5">
        <head><cell>${word("day.column.load")}</cell><cell>${word("day.column.what")}</cell><cell/><cell>${word("day.column.canner")}</cell><cell>${word("day.column.process")}</cell><cell>${word("day.column.out")}</cell><cell>${word("day.column.test")}</cell></head>
        <#list d.loads as l><row><cell><b>${l.name}</b></cell><cell>${l.product}, ${l.pack}</cell><cell>${l.jars}</cell><cell>${l.canner}</cell><cell><b>${l.minutes} ${word("day.column.min")}</b></cell><cell>${l.out}</cell><cell>${l.testFrom}</cell></row></#list>
      </table>
      <#list d.notices as n><para size="9.5" before="0.8"><sign name="arrow"/> ${n}</para></#list>
      <heading level="2" size="13">${word("day.gather")}</heading>
      <#if d.gather?size lte 24>
      <#assign half = ((d.gather?size + 1) / 2)?floor>
      <columns widths="* *" gap="6" around="0"><column><@need d.gather[0..<half]/></column><column><#if half lt d.gather?size><@need d.gather[half..]/></#if></column></columns>
      <#else><@need d.gather/></#if>
    </body>
  </section>
</#list>
</sheet>
