<#-- The day by the clock. Its first side says all that a kitchen door has to.
  household, paper (w, h in mm)
  days  list of: date, start, finish, finishRange (two clock times), jars
    ahead    when, food (its letter), what and caution (runs: text, amount): work of days before, earliest first
    foods    letter, product
    loads    name, first (of its batch), product, pack, jars, minutes, canner, fill, timer, out, testFrom
    lanes    captions, from left to right
    sides    minutes, ticks (at, clock, hour, day at midnight), blocks (lane, from, to, exact, estimate, clock, text, length, food where it is the batch's first), rushes (from, to)
    tasks    day (where it is another than the row before's), start, end, load, what, length, exact, process, hands
    gather   what, amount, note
    notices  sentences -->
<#assign across = paper.w - 20 - 12>
<#assign ruler = 20>

<#macro runs line><#list line as r><#if r.amount><keep>${r.text}</keep><#else>${r.text}</#if></#list></#macro>
<#macro task t><#if t.day?has_content><b>${t.day}</b><br/></#if><#if t.process><b>${t.what}</b><#else>${t.what}</#if><#if t.hands gt 1> · ${count("day.people", t.hands)}</#if></#macro>
<#macro length t><#if t.process><b>${t.length}</b><#elseif t.exact>${t.length}<#else>~${t.length}</#if></#macro>

<#-- In two columns, down the left half first; row by row, so that it may go on over a side. -->
<#macro hourTable tasks size pad>
<#local half = ((tasks?size + 1) / 2)?floor>
<table columns="6 18 11 * 12.5 3 6 18 11 * 12.5" line="0.6" pad="${pad}" around="0.5" size="${size}">
  <head><@hourHeads/><cell/><@hourHeads/></head>
  <#list 0..<half as i><row><@hour tasks[i]/><cell/><#if i + half lt tasks?size><@hour tasks[i + half]/><#else><cell/><cell/><cell/><cell/><cell/></#if></row></#list>
</table>
</#macro>
<#macro hourHeads><cell/><cell>${word("day.column.time")}</cell><cell>${word("day.column.load")}</cell><cell>${word("day.column.what")}</cell><cell>${word("day.column.min")}</cell></#macro>
<#macro hour t><#local tint = t.process?then(' tint="14%"', '')?no_esc><cell${tint}><box size="3.8" line="1"/></cell><cell${tint}>${t.start}</cell><cell${tint}>${t.load}</cell><cell${tint}><@task t/></cell><cell${tint}><@length t/></cell></#macro>

<#-- A longer day's, in stretches that stay on one side, each as long as the others. -->
<#macro hours d>
<heading size="16" before="0">${word("day.steps")}</heading>
<@legend d/>
<#local parts = ((d.tasks?size + 21) / 22)?floor, each = ((d.tasks?size + parts - 1) / parts)?floor>
<#list d.tasks?chunk(each) as part><group><@hourTable part 9 0.65/></group></#list>
</#macro>

<#macro gathered d size pad>
<heading level="2" size="${size + 3}" before="1.5">${word("day.gather")}</heading>
<#local half = ((d.gather?size + 1) / 2)?floor>
<table columns="6 * * 3 6 * *" line="0.6" pad="${pad}" around="0.5" size="${size}">
  <head><@needHeads/><cell/><@needHeads/></head>
  <#list 0..<half as i><row><@need d.gather[i]/><cell/><#if i + half lt d.gather?size><@need d.gather[i + half]/><#else><cell/><cell/><cell/></#if></row></#list>
</table>
</#macro>
<#macro needHeads><cell/><cell>${word("day.column.need")}</cell><cell>${word("day.column.amount")}</cell></#macro>
<#macro need g><cell><box size="3.8" line="1"/></cell><cell><b>${g.what?cap_first}</b><#if g.note != ""><br/>${g.note}</#if></cell><cell><#list g.amount?split(" ") as w><#if w?contains("/")><frac>${w}</frac><#else>${w}</#if><#sep> </#list></cell></#macro>

<#-- When to begin and when it is done, what comes before, what is made. -->
<#macro door d size pad>
<heading size="20" before="0" after="0">${day("weekday", d.date)?cap_first}</heading>
<readings figure="21" around="1.5" line="1">
  <reading value="${d.start}" caption="${word("day.begin")}" share="3"/>
  <reading value="${d.finish}" caption="${word("day.done")}: ${word("day.done-range", {"least": d.finishRange[0], "most": d.finishRange[1]})}" share="5"/>
  <reading value="${d.jars}" caption="${count("day.jars-word", d.jars)}, ${count("day.loads", d.loads?size)}" share="2"/>
</readings>
<#if d.ahead?has_content>
<heading level="2" size="${size + 3}" before="1.5">${word("day.ahead")}</heading>
<table columns="6 46 9 *" line="0.6" pad="${pad}" around="0.5" size="${size}">
  <#list d.ahead as a><row tint="10%"><cell><box size="3.8" line="1"/></cell><cell><b>${a.when?cap_first}</b></cell><cell><b>${a.food}</b></cell><cell><@runs a.what/><#if a.caution?has_content><br/><@runs a.caution/></#if></cell></row></#list>
</table>
</#if>
<heading level="2" size="${size + 3}" before="1.5">${word("day.foods")}</heading>
<#nested>
</#macro>

<#macro loads d size pad>
<table columns="9 * 22 26 17 19 28" line="0.6" pad="${pad}" around="0.5" size="${size}">
  <head><cell/><cell>${word("day.column.what")}</cell><cell/><cell>${word("day.column.canner")}</cell><cell>${word("day.column.process")}</cell><cell>${word("day.column.out")}</cell><cell>${word("day.column.test")}</cell></head>
  <#list d.loads as l><row><cell><b>${l.name}</b></cell><cell><#if l.first><b>${l.product}</b>, ${l.pack}</#if></cell><cell>${l.jars}</cell><cell>${l.canner}</cell><cell><b>${l.minutes} ${word("day.column.min")}</b></cell><cell>${l.out}</cell><cell>${l.testFrom}</cell></row></#list>
</table>
</#macro>

<#-- The same where the hours stand on another side. -->
<#macro loadsTimed d size pad>
<table columns="9 * 20 22 19.5 19.5 17 19.5 25" line="0.6" pad="${pad}" around="0.5" size="${size}">
  <head><cell/><cell>${word("day.column.what")}</cell><cell/><cell>${word("day.column.canner")}</cell><cell>${word("day.column.fill")}</cell><cell>${word("day.column.timer")}</cell><cell>${word("day.column.process")}</cell><cell>${word("day.column.out")}</cell><cell>${word("day.column.test")}</cell></head>
  <#list d.loads as l><row><cell><b>${l.name}</b></cell><cell><#if l.first><b>${l.product}</b>, ${l.pack}</#if></cell><cell>${l.jars}</cell><cell>${l.canner}</cell><cell>${l.fill}</cell><cell>${l.timer}</cell><cell><b>${l.minutes} ${word("day.column.min")}</b></cell><cell>${l.out}</cell><cell>${l.testFrom}</cell></row></#list>
</table>
</#macro>

<#macro said d size>
<#list d.notices as n><para size="${size}" before="0.8"><sign name="arrow"/> ${n}</para></#list>
<para size="${size}" b="yes" before="1" after="0">${word("day.caution")}</para>
</#macro>

<#macro legend d><para size="9.5" before="0" after="0.5"><#list d.foods as f><b>${f.letter}</b> ${f.product}<#sep> · </#list></para></#macro>

<#macro picture d above>
<#list d.sides as side>
<#if side?index gt 0><break/></#if>
<#local lane = (across - ruler) / d.lanes?size, top = 9, down = paper.h - above - 66>
<#local scale = [(down - top) / side.minutes, 0.8]?min>
<heading level="2" size="14" before="0" after="0.5">${word("day.picture")}</heading>
<@legend d/>
<drawing w="${across}" h="${top + side.minutes * scale + 3}" alt="${word("day.picture-alt")}">
  <#list d.lanes as head>
  <text x="${ruler + head?index * lane + 0.8}" y="0" w="${lane - 1.6}" h="7.5" size="9.5" min="6" b="yes" align="center" valign="bottom">${head}</text>
  <line x1="${ruler + head?index * lane}" y1="${top}" x2="${ruler + head?index * lane}" y2="${top + side.minutes * scale}" line="0.5" ink="45%"/>
  </#list>
  <#list side.ticks as t>
  <line x1="${ruler - (t.hour?then(3, 1.5))}" y1="${top + t.at * scale}" x2="${across}" y2="${top + t.at * scale}" line="0.5" ink="${t.hour?then('45%', '25%')}" <#if !t.hour>dash="1"</#if>/>
  <text x="0" y="${top + t.at * scale + 1.3}" size="${t.hour?then(9.5, 7.5)}" b="${t.hour?string('yes', 'no')}">${t.clock}</text>
  <#if t.day?has_content><text x="0" y="${top + t.at * scale + 4.6}" size="7.5" b="yes">${t.day}</text></#if>
  </#list>
  <#list side.rushes as r><rect x="${ruler - 1.6}" y="${top + r.from * scale}" w="1.2" h="${(r.to - r.from) * scale}" fill="black"/></#list>
  <#list side.blocks as b>
  <#local x = ruler + b.lane * lane + 1.2, y = top + b.from * scale, w = lane - 2.4, h = [(b.to - b.from) * scale, 0.8]?max>
  <#if b.exact><rect x="${x}" y="${y}" w="${w}" h="${h}" fill="black"/>
  <#else><rect x="${x}" y="${y}" w="${w}" h="${h}" fill="white" line="0.6"/><#if b.estimate><rect x="${x}" y="${y}" w="2.2" h="${h}" hatch="1.1" line="0.6"/></#if></#if>
  <#if b.clock><sign x="${x + w - 4.2}" y="${y + 0.6}" size="3.4" name="clock" ink="${b.exact?then('white', 'black')}"/></#if>
  <#local ink = b.exact?then('white', 'black'), room = w - (b.clock?then(7.5, 3.4))>
  <#if h gte 3><text x="${x + 3}" y="${y + 0.1}" w="${room}" h="${h - 0.2}" size="9" min="6" ink="${ink}" valign="${(h gt 8)?then('top', 'middle')}"><part b="${b.exact?string('yes','no')}">${b.text}</part><#if b.food != ""><part b="yes" drop="2">${b.food}</part></#if><part drop="1">${b.length}</part></text>
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
</#macro>

<#macro side d above>
<section margin="12" left="20">
  <header size="9">
    <columns widths="* *"><column>${word("day.title")}<#if household?has_content> · ${household}</#if></column><column align="right">${day("long", d.date)} · ${word("page.of-before")} <page/> ${word("page.of")} <pages/></column></columns>
    <rule line="1.5" around="1"/>
  </header>
  <body><#nested></body>
</section>
</#macro>

<#-- An ordinary day: all hours on the first side, the picture on its back. -->
<#macro ordinary d above size pad>
<@side d above>
  <@door d size pad><@loads d size pad/></@door>
  <@gathered d size pad/>
  <heading level="2" size="${size + 3}" before="1.5">${word("day.steps")}</heading>
  <@hourTable d.tasks size pad/>
  <@said d size/>
  <break/>
  <@picture d above/>
</@side>
</#macro>

<#-- A longer day: its hours have sides of their own. -->
<#macro long d above size pad>
<@side d above>
  <@door d size pad><@loadsTimed d size pad/></@door>
  <@gathered d size pad/>
  <@said d size/>
  <break/>
  <@picture d above/>
  <break/>
  <@hours d/>
</@side>
</#macro>

<sheet size="10.5">
<#-- What a long name takes in the header besides its first line. -->
<#assign above = 4 * ((word("day.title")?length + household?length) / 48)?floor>
<#list days as d>
<fit sides="2">
  <@long d above 10.5 0.9/>
  <@long d above 9.5 0.65/>
  <#if d.tasks?size lte 64>
  <@ordinary d above 9.5 0.65/>
  <@ordinary d above 9 0.4/>
  <@ordinary d above 8.5 0.25/>
  </#if>
</fit>
</#list>
</sheet>
