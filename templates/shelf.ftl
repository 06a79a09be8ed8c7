<#-- The shelf inventory sheet.
  household  text, may be empty        today  ISO date         jars  fit to use
  due        lines due by the end of next month, first to use first
  months     name, year, jars          falling due, from this month on; this one holds all before it
  places     name, calls (needs doing), jars, lines
  totals     product, jar, jars
  A line: place, calls (needs doing), product, pack, jar, lot, packed, useBy (ISO or empty), recanDay and recanTime
  (by when to re-can; may be empty), lookDay and lookTime (from when its seal may be tested; may be empty),
  numbers (list), says (what the jars show; empty where they may be eaten until their date), stop (they must
  not be eaten as they are), stands (the shelf to take them from; may be empty), vouched (by whose word they
  may be eaten; may be empty), from; and, where places list it, soFar and ofAll: jars of its product and size down to this line
  and on the whole sheet. -->
<#-- A list of kinds in brackets, which may be long, is set smaller than the name. -->
<#macro product whole><b>${whole?keep_before(" (")}</b><#if whole?contains(" (")> <span size="8">(${whole?keep_after(" (")}</span></#if></#macro>
<#macro named line><@product line.product/><#if line.jar?has_content><br/><span ink="65%">${count("jar." + line.jar, 1)}<#if line.pack?has_content> · ${word("pack." + line.pack)}</#if></span></#if></#macro>
<#macro remarks line>
  <#if line.says?has_content><span b="yes"><sign name="<#if line.stop>warning<#else>arrow</#if>"/> ${line.says}</span><br/></#if>
  <#if line.stands?has_content><span b="yes">${word("shelf.stands", {"shelf": line.stands})}</span><br/></#if>
  <#if line.vouched?has_content>${line.vouched}<br/></#if>
</#macro>
<#macro when line><#if line.useBy?has_content>${day("short", line.useBy)}<#elseif line.recanDay?has_content>${day("short", line.recanDay)}<br/><b>${line.recanTime}</b><#elseif line.lookDay?has_content>${word("shelf.test-from")} ${day("short", line.lookDay)}<br/><b>${line.lookTime}</b><#elseif !line.calls>${word("shelf.no-date")}</#if></#macro>
<#macro rings numbers gap=1.3><marks shape="ring" size="6.5" gap="${gap}" around="0" labels="<#list numbers as n>${n?string("00")}<#sep> </#list>"/></#macro>
<#-- The rings of a large lot take the whole width, twenty in a row, and may go on to the next side. -->
<#assign beside = 42, across = 100>
<#macro wide numbers><row><cell span="6"><@rings numbers 2.4/></cell></row></#macro>
<#-- What ends the sheet stands together, so that no last side holds two lines alone. -->
<#macro tail blanks>
      <heading level="2" size="14" before="5">${word("shelf.others")}</heading>
      <table columns="43 28 22 * 18 19" line="0.6">
        <head><cell>${word("shelf.column.product")}</cell><cell>${word("shelf.column.lot")}</cell><cell>${word("shelf.column.use-by")}</cell><cell>${word("shelf.column.jars")}</cell><cell>${word("shelf.column.counted")}</cell><cell>${word("shelf.column.found")}</cell></head>
        <#list 1..blanks as i><row h="9"><cell/><cell/><cell/><cell/><cell/><cell/></row></#list>
      </table>
      <heading level="2" size="14" before="5">${word("shelf.totals")}</heading>
      <table columns="* 40 25" align-columns="left left right" line="0.5">
        <#list totals as total>
        <row><cell><@product total.product/></cell><cell><#if total.jar?has_content>${count("jar." + total.jar, total.jars)}</#if></cell><cell><b>${number(total.jars)}</b></cell></row>
        </#list>
        <row line="1.5"><cell><b>${word("shelf.all")}</b></cell><cell/><cell><b>${number(jars)}</b></cell></row>
      </table>
      <para size="9" before="3">${word("shelf.how-to-count")}</para>
      <para size="9" before="2">${word("shelf.caution")}</para>
</#macro>

<#macro inventory blanks chart>
  <section margin="12" left="18">
    <header size="9">
      <columns widths="* *">
        <column>${word("shelf.title")}<#if household?has_content> · ${household}</#if></column>
        <column align="right">${word("shelf.as-of", {"date": day("long", today)})} · ${word("page.of-before")} <page/> ${word("page.of")} <pages/></column>
      </columns>
      <rule line="1.5" around="1"/>
    </header>
    <body>
      <heading size="20">${word("shelf.title")}</heading>
      <#if due?has_content>
      <heading level="2" size="14">${word("shelf.due")} <span size="10" b="no">${count("shelf.jars", dueJars)}</span></heading>
      <table columns="* 28 26 34 17" align-columns="left left left left right" line="0.6">
        <head><cell>${word("shelf.column.product")}</cell><cell>${word("shelf.column.lot")}</cell><cell>${word("shelf.column.use-by")}</cell><cell>${word("shelf.column.place")}</cell><cell>${word("shelf.all")}</cell></head>
        <#list due as line>
        <row><cell><@named line/><#if line.says?has_content><br/><span b="yes"><#if line.stop><sign name="warning"/> </#if>${line.says}</span></#if><#if line.vouched?has_content><br/>${line.vouched}</#if></cell><cell>${line.lot}</cell><cell><@when line/></cell><cell>${line.place}</cell><cell><b>${number(line.numbers?size)}</b></cell></row>
        </#list>
      </table>
      </#if>
      <#assign most = 1/>
      <#list months as m><#if (m.jars > most)><#assign most = m.jars/></#if></#list>
      <heading level="2" size="14">${word("shelf.months")}</heading>
      <#local filled = months?filter(m -> m.jars gt 0)>
      <#if filled?size lte 1>
      <para before="0"><#if filled?has_content>${filled[0].name} ${filled[0].year}: ${count("shelf.jars", filled[0].jars)}<#else>${count("shelf.jars", 0)}</#if></para>
      <#else>
      <#local base = chart - 9>
      <drawing w="178" h="${chart}" alt="${word("shelf.months-alt")}<#list months as m> ${m.name} ${m.year}: ${m.jars}.</#list>">
        <line x1="0" y1="${base}" x2="178" y2="${base}" line="1"/>
        <#list months as m>
        <#assign x = m?index * 13.7/>
        <#if (m.jars > 0)>
        <#assign h = (base - 7) * m.jars / most/>
        <rect x="${x + 2}" y="${base - h}" w="10" h="${h}" <#if m?index == 0>fill="black"<#else>line="1" hatch="1.6"</#if>/>
        <text x="${x + 7}" y="${base - 1.4 - h}" align="center" size="9" b="yes">${number(m.jars)}</text>
        </#if>
        <text x="${x + 7}" y="${base + 4}" align="center" size="8.5">${m.name}</text>
        <#if m?index == 0 || m.year != months[m?index - 1].year><text x="${x + 7}" y="${base + 8}" align="center" size="8" b="yes">${m.year}</text></#if>
        </#list>
      </drawing>
      </#if>
      <#list places as place>
      <heading level="2" size="14" before="4"><#if place.calls><sign name="warning"/> </#if>${place.name} <span size="10" b="no">${count("shelf.jars", place.jars)}</span></heading>
      <table columns="43 28 22 * 18 19" line="0.6" pad="1.3">
        <head><cell>${word("shelf.column.product")} <span size="8.5" b="no">${place.name}</span></cell><cell>${word("shelf.column.lot")}</cell><cell>${word("shelf.column.use-by")}</cell><cell>${word("shelf.column.jars")}</cell><cell>${word("shelf.column.counted")}</cell><cell>${word("shelf.column.found")}</cell></head>
        <#list place.lines as line>
        <group>
          <row><cell><@named line/><br/><#if line.soFar != line.ofAll || line.soFar != line.numbers?size><span size="8.5">${word("shelf.so-far", {"n": number(line.soFar), "all": number(line.ofAll)})}</span><br/></#if><@remarks line/></cell><cell>${line.lot}<#if line.packed?has_content><br/><span size="8"><keep>${word("shelf.packed")} ${day("iso", line.packed)}</keep></span></#if></cell><cell><@when line/></cell><cell><#if line.numbers?size lte beside><@rings line.numbers/><#else>${count("shelf.jars", line.numbers?size)}</#if></cell><cell></cell><cell></cell></row>
          <#if line.numbers?size gt beside><@wide line.numbers[0..<[across, line.numbers?size]?min]/></#if>
        </group>
        <#if line.numbers?size gt across><#list line.numbers[across..]?chunk(across) as some><@wide some/></#list></#if>
        </#list>
      </table>
      </#list>
      <#if totals?size lte 14><group><@tail blanks/></group><#else><@tail blanks/></#if>
    </body>
  </section>
</#macro>

<#-- A few lots stand on one side where they can. -->
<#assign few = 0>
<#list places as place><#assign few += place.lines?size></#list>
<sheet size="10">
<#if few lte 30><fit sides="1"><@inventory 4 34/><@inventory 3 28/><@inventory 2 22/></fit><#else><@inventory 4 34/></#if>
</sheet>
