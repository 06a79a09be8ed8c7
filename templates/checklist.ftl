<#-- The checklist of each batch, for both sides of a sheet.
  large      whether the type is for eyes that need it larger
  paper      w, h in mm
  batches    list of:
    product, name, kinds   the whole name; the name and the list of kinds in brackets, which may be empty
    pack, jars, jarsOfSize, method, pressure (yes/no), loads, source
    dated, and if so lot, date, useBy
    times     due (section id to planned clock times in words), starts, ends (of each load's clock); empty if not dated
    altitude  kitchen, band (main, also), kitchenFeet, fromFeet, toFeet (0: no upper end), ticks (feet, label)
    formula   lines (ingredient, main, also, note, fixed), may be empty; and if not made, yield
    notes     sentences about the time
    doubts    title, runs (text, amount); the last is whom to ask
    sections  list of: id, title, steps, begins (no where it goes on with a part before). The ids, in working order: ahead, before, jars, produce, fill, canner,
              clock, out, next-day, optional (what most leave out); a long section comes in parts of one id
      steps   kind, runs (text, amount), figure (main, also), caution; and by kind
        action, wait (time runs)
        tally   jars: a box for each
        gauge   depths (mm, main, also, to)
        clock   minutes, pressure (main, also), fields, loads (jars in each)
        record  fields
  A figure has main, set big, and also, the same in the household's other units, which may be empty. -->
<#assign body = large?then(18, 14), small = large?then(15, 12)>

<#-- How closely a sheet is set, never in smaller words: the first way that keeps to two sides is taken.
     In mm: box, gap (below a step), head (a section's sign), air (above a section), row (to write in), field,
     pad (in the formula's rows), under (the header), ring (of the clock), pot; in pt: title, louder (a section's
     title than the words); leading times the size; beside: a deep headspace stands beside steps; whole: the
     sections that are not divided. -->
<#assign set = {}>
<#assign usual = {"box": 7, "gap": 0.3, "leading": 1.3, "head": 7, "air": 1.2, "row": 9.2, "field": 9, "pad": 0.5,
  "under": 2, "ring": 28, "pot": 29.2, "keeps": true, "formula": 1, "band": 7, "doubt": 1, "title": 20, "louder": 2.5, "beside": false, "paired": false, "whole": ["fill", "canner", "clock"]}>
<#assign airy = usual + {"gap": 0.6, "air": 3}>
<#assign loose = usual + {"whole": ["clock"]}>
<#assign close = {"box": 5.8, "gap": 0.3, "leading": 1.25, "head": 6, "air": 0.7, "row": 8, "field": 8, "pad": 0.3,
  "under": 1.2, "ring": 25, "pot": 26, "keeps": true, "formula": 0, "band": 6, "doubt": 0.7, "title": 17, "louder": 1.5, "beside": true, "whole": ["clock"], "paired": false}>
<#assign closest = close + {"box": 5.6, "gap": 0, "air": 0.4, "head": 5.6, "louder": 0.5, "doubt": 0.5, "field": 6.4, "row": 7.6, "band": 5.4, "pot": 24.6, "keeps": false, "whole": []}>
<#assign paired = closest + {"paired": true}>
<#assign dense = paired + {"leading": 1.15, "box": 5.3, "row": 7.2, "field": 6.2, "air": 0.3}>
<#-- Larger type takes the sides that it needs, and as few as it can: the first of these that takes the fewest. -->
<#assign big = usual + {"box": 9, "head": 8.6, "field": 11, "row": 10.5, "ring": 33, "band": 8, "pot": 34}>
<#assign bigger = big + {"gap": 0.8, "air": 3}>
<#assign ways = large?then([bigger, big, big + {"whole": ["canner", "clock"]}, big + {"whole": ["clock"], "air": 0.8}],
  [airy, usual, loose, close, closest, paired, dense])>
<#-- In mm. A section's sign stands out to the left by 1.3. -->
<#assign margin = 8, left = margin + 1.5, right = margin + 10, binding = 12>
<#assign across = paper.w - left - right - binding>
<#assign down = paper.h - 2 * margin>

<#macro runs of><#list of as r><#if r.amount><b><frac>${r.text}</frac></b><#else>${r.text}</#if></#list></#macro>

<#macro plain of><#list of as r><#if r.amount><frac>${r.text}</frac><#else>${r.text}</#if></#list></#macro>

<#macro fractions text><#list text?split(" ") as w><#if w?contains("/")><frac>${w}</frac><#else>${w}</#if><#sep> </#list></#macro>

<#macro caution text><#if text != ""><caution brief="yes" size="${small}" around="0.3">${text}</caution></#if></#macro>

<#macro step s keep>
<#if s.kind == "clock"><@clock s/><#elseif s.kind == "gauge"><@gauge s keep/><#elseif s.kind == "tally"><@tally s keep/><#else>
<step figure="${s.figure.main}" also="${s.figure.also}" line="${(s.kind == "wait")?then("thick", "thin")}" keep="${keep}">
  <para before="0" after="0"><@runs s.runs/></para>
  <@caution s.caution/>
</step>
</#if>
</#macro>

<#-- One box for each jar, in rows that may go on to the next side. -->
<#macro tally s keep>
<#local row = 14, tick = set.box>
<step box="0" figure="${s.figure.main}" also="${s.figure.also}" keep="${(s.jars gt row)?then("yes", keep)}">
  <para before="0" after="0.6"><@runs s.runs/></para>
  <#if s.jars lte row><columns widths="${s.jars * (tick + 1.2)} *" gap="2" valign="middle" around="0"><column><marks size="${tick}" gap="1.1" around="${set.air}" count="${s.jars}"/></column><column><@caution s.caution/></column></columns>
  <#else><@caution s.caution/></#if>
</step>
<#if s.jars gt row><#list 1..s.jars as j><#if j % 60 == 1><step box="0"><marks size="${tick}" gap="1.1" count="${[60, s.jars - j + 1]?min}" from="${j}"/></step></#if></#list></#if>
</#macro>

<#-- Headspace as deep as it is. The words of the step stand in a deep one, and above a shallow one, so that no
     line runs through them. -->
<#macro gauge s keep>
<#local depths = s.depths, deepest = 0, food = 2.6, words = across - set.box - 8.5>
<#list depths as d><#if d.mm gt deepest><#local deepest = d.mm></#if></#list>
<#local each = (words - 5 * (depths?size - 1)) / depths?size, alone = depths?size == 1, inside = alone && deepest gt 12>
<#local line = inside?then([3, deepest / 0.3528 / body]?min, set.leading), up = inside?then(line * body * 0.3528, -1.2)>
<step figure="${alone?then(depths[0].main, "")}" also="${alone?then(depths[0].also, "")}" keep="${keep}">
<para before="0" after="0" leading="${line}"><@runs s.runs/><#if !inside || !large>  <@trueSize/></#if></para>
<drawing w="${words}" h="${deepest - up + food}" around="0" alt="<#if !alone><#list depths as d>${d.main} ${d.to}<#sep>, </#list></#if>">
<#list depths as d>
  <#local x = d?index * (each + 5)>
  <rect x="${x}" y="${d.mm - up}" w="${each}" h="${deepest - d.mm + food}" fill="20%" line="0"/>
  <line x1="${x}" y1="${-up}" x2="${x + each}" y2="${-up}" line="2"/>
  <line x1="${x}" y1="${d.mm - up}" x2="${x + each}" y2="${d.mm - up}" line="2"/>
  <#if !alone><text x="${x + 2}" y="${1 - up}" w="${each - 4}" h="${d.mm - 2}" size="19" min="8" valign="middle" leading="1.15"><part b="yes"><frac>${d.main}</frac><span b="no" size="${small}">  ${d.also} ${d.to}</span></part></text></#if>
</#list>
</drawing>
<#if inside && large><para size="${small}" before="0.6" after="0"><@trueSize/></para></#if>
<@caution s.caution/>
</step>
</#macro>

<#macro trueSize><span size="${small}">${word("gauge.true")}</span></#macro>

<#macro head s n>
<#local due = s.begins?then((times.due[s.id])!"", ""), r = set.head / 2>
<columns widths="9 *" gap="1.5" valign="middle" around="${set.air}" keep="yes">
  <column><drawing w="9" h="${set.head}" around="0" alt=""><circle cx="${r - 1.3}" cy="${r}" r="${r}" fill="black"/><text x="${r - 1.3}" y="${r + 1.6}" align="center" size="13" b="yes" ink="white">${n}</text></drawing></column>
  <column><heading level="2" size="${body + set.louder}" before="0" after="0">${s.title}<#if due != ""> <span size="${small}" b="no"><keep>${due}</keep></span></#if></heading></column>
</columns>
</#macro>

<#-- Steps of a section, all or some; neither its first nor its last stands alone on a side if there is room.
     ends: whether the section ends with them. -->
<#macro list s some=s.steps ends=true>
<steps box="${set.box}" gap="${set.gap}" around="0.2"><#list some as one><#if one.kind != "record"><@step s=one keep=((one?index == 0 && set.keeps && some?size gt 1) || (one?index == some?size - 2 && ends) || (one?index == some?size - 1 && !ends && set.keeps))?then("yes", "no")/></#if></#list></steps>
</#macro>

<#macro part s n><@head s n/><@list s/></#macro>

<#-- Two short sections side by side; what is written in last stands in the shorter column or below. -->
<#macro pair a b n>
<#local within = a.steps?size gte b.steps?size>
<columns widths="* *" gap="5" around="${set.air}"><column><@part a n/></column><column><@part b n + 1/><#if within><@record b 2/></#if></column></columns>
<#if !within><@record b 4/></#if>
</#macro>

<#-- Two short sections, and what belongs below the second. -->
<#macro both a b n>
<#if large><@part a n/><#if a.id == "out"><group><@part b n + 1/><@record b 4/><#nested></group><#else><@part b n + 1/></#if>
<#elseif a.id == "out"><group><@pair a b n/><#nested></group>
<#else><@pair a b n/></#if>
</#macro>

<#-- A single headspace beside the steps that follow it, where room is dear. -->
<#macro gaugeBeside some>
<#local depth = some[0].depths[0], w = 62, food = 2.6>
<columns widths="* ${w}" gap="3" around="0"><column>
<steps box="${set.box}" gap="${set.gap}" around="0.2">
<step figure="${depth.main}" also="${depth.also}"><para before="0" after="0"><@runs some[0].runs/></para><@caution some[0].caution/></step>
<#list some[1..] as one><@step one "no"/></#list>
</steps></column><column>
<drawing w="${w}" h="${depth.mm + food + 1}" around="0.3" alt="${word("gauge.true")}">
<rect x="0" y="${depth.mm + 1}" w="${w}" h="${food}" fill="20%" line="0"/>
<line x1="0" y1="1" x2="${w}" y2="1" line="2"/>
<line x1="0" y1="${depth.mm + 1}" x2="${w}" y2="${depth.mm + 1}" line="2"/>
<text x="0" y="2" w="${w}" h="${depth.mm - 2}" size="${small}" align="center" valign="middle">${word("gauge.true")}</text>
</drawing></column></columns>
</#macro>

<#macro fill s n>
<#local before = s.steps?take_while(one -> one.kind != "gauge"), rest = s.steps[before?size..], deep = 8>
<#if set.beside && rest[0].depths?size == 1 && rest[0].depths[0].mm gt deep>
<#local beside = [(rest[0].depths[0].mm gt 20)?then(4, 2), rest?size]?min>
<@head s n/><@list s before false/><@gaugeBeside rest[0..<beside]/><#if rest?size gt beside><@list s rest[beside..]/></#if>
<#else><@part s n/></#if>
</#macro>

<#-- A section, on one side where its sort is kept whole. -->
<#macro section s n pressure>
<#if s.id == "canner"><@canner s n pressure/><#elseif s.id == "fill"><@fill s n/><#else><@part s n/></#if>
</#macro>

<#-- How many lines the steps of a section take in a column so wide in mm, about. -->
<#function lines s wide>
<#local sum = 0>
<#list s.steps as one>
<#local said = one.runs?map(r -> r.text)?join("")?length * 2.2, warned = one.caution?length * 1.95>
<#local sum += (said / wide)?ceiling + (warned == 0 || said + warned + 14 lt wide)?then(0, (warned / (wide - 4))?ceiling * 0.8)>
</#list>
<#return sum>
</#function>

<#-- Whether two parts of a long section are shorter side by side: where their steps are short. -->
<#function besides a b>
<#if !set.paired || a.id != b.id><#return false></#if>
<#local half = (across - 5) / 2 - set.box - 8.5, full = across - set.box - 8.5>
<#return [lines(a, half), lines(b, half)]?max + 1 lt (lines(a, full) + lines(b, full) + 2) * 0.9>
</#function>

<#macro clock s>
<#local beside = s.loads?size lte 3>
<step line="thick">
  <para before="0" after="0.4" b="yes" size="${body + 1}"><@runs s.runs/><#if s.pressure.main != ""> <figure scale="1.6">${s.pressure.main}</figure> <span b="no">${s.pressure.also}</span></#if></para>
  <panel line="2.2" pad="1" around="${set.air}">
  <columns widths="${set.ring} *" gap="4" valign="middle" around="0">
    <column><@ring s.minutes/></column>
    <column>
      <caution brief="yes" size="${body}"><b>${s.caution}</b></caution>
      <#if beside><@loads s.loads 1 s/></#if>
    </column>
  </columns>
  <#list notes as note><para size="${small}" before="0.8" after="0">${note}</para></#list>
  </panel>
</step>
<#if !beside>
<#local tables = ((s.loads?size + 7) / 8)?floor, each = ((s.loads?size + tables - 1) / tables)?floor>
<#list s.loads?chunk(each) as some><step box="0" line="thick"><@loads some some?index * each + 1 s/></step></#list>
</#if>
</#macro>

<#-- The clock starts in the second column and ends in the third. -->
<#macro loads some from s>
<#local fields = s.fields>
<table columns="${large?then(31, 23)}<#list fields as f> *</#list>" line="0.8" grid="yes" pad="0.6" around="0.6" size="${small}">
  <head><cell>${word("clock.load")}</cell><#list fields as f><cell>${f}</cell></#list></head>
  <#list some as jars><row h="${set.row}"><cell valign="middle">${word("clock.jars", {"load": from + jars?index, "n": jars})}</cell><#list fields as f><cell valign="bottom"><#if f?index == 1 || f?index == 2><@planned (f?index == 1)?then(times.starts, times.ends) from - 1 + jars?index/></#if></cell></#list></row></#list>
</table>
</#macro>

<#macro planned of at><#if at lt of?size><para size="9" before="0" after="0" align="right">${of[at]}</para></#if></#macro>

<#-- The minutes as the part of an hour that the hand runs through; each full hour is a ring of its own. -->
<#macro ring minutes>
<#local hours = (minutes / 60)?floor, rest = minutes - hours * 60, rings = hours + (rest gt 0)?then(1, 0), thin = rings gt 1, c = set.ring / 2, k = large?then(1.15, 1)>
<drawing w="${set.ring}" h="${set.ring}" around="0" alt="${word("clock.ring", {"n": minutes})}">
  <#list 0..11 as tick><arc cx="${c}" cy="${c}" r="${c - 0.5}" from="${tick * 30 - 1}" to="${tick * 30 + 1}" line="3"/></#list>
  <#list 0..<rings as r>
    <#local radius = thin?then(c - 2.4 - r * 1.7, c - 3.2)>
    <circle cx="${c}" cy="${c}" r="${radius}" line="0.8" ink="40%"/>
    <arc cx="${c}" cy="${c}" r="${radius}" from="0" to="${(r lt hours)?then(359.9, rest * 6)}" line="${thin?then(3.4, 9)}"/>
  </#list>
  <text x="${c}" y="${c + k * (minutes gt 99)?then(1.4, 2)}" align="center" size="${k * (minutes gt 99)?then(20, 28)}" b="yes">${minutes}</text>
  <text x="${c}" y="${c + k * (minutes gt 99)?then(4.8, 5.8)}" align="center" size="${k * (minutes gt 99)?then(10, 12)}" b="yes">${word("clock.minutes")}</text>
</drawing>
</#macro>

<#macro formulaList f>
<#local marks = f.lines?filter(l -> l.fixed)?has_content>
<columns widths="${(body + set.louder) * 2.14} *" gap="1" around="${set.air}">
<column><heading level="2" size="${body + set.louder}" before="0" after="0">${word("formula.title")}</heading></column>
<column><para size="${small}" before="0" after="0"><@fractions f.made/> ${f.yield} ${word("formula.keep")}<#if marks> <keep><sign name="drop"/> ${word("formula.fixed")?keep_before(" ")}</keep> ${word("formula.fixed")?keep_after(" ")}</#if></para></column>
</columns>
<#if f.lines?size lte 3><@amounts f.lines/><#else>
<#local all = 0, left = 0, half = 0>
<#list f.lines as l><#local all += rows(l)></#list>
<#list f.lines as l><#if left lt all / 2><#local left += rows(l), half += 1></#if></#list>
<columns widths="* *" gap="6" around="0">
<#list [f.lines[0..<half], f.lines[half..]] as side><column><@amounts side/></column></#list>
</columns></#if>
</#macro>

<#-- How many lines an ingredient takes in half the width, about. -->
<#function rows l><#return ((l.ingredient?length + l.note?length * 0.9) / 29)?ceiling></#function>

<#macro amounts lines>
<#local longest = lines?map(l -> l.main?replace("[0-9]+/[0-9]+", "#", "r")?length * 1.15 + l.also?length)?max>
<table columns="* ${[[longest * (1.85 + set.formula * 0.15) + 3, 22]?max, 37]?min}" align-columns="left right" line="0.6" pad="${set.pad}" around="0" size="${small + set.formula}">
<#list lines as l><row><cell><#if l.fixed><sign name="drop"/> <b>${l.ingredient}</b><#else>${l.ingredient}</#if><#if l.note != ""> <span size="${small - 1}">(${l.note})</span></#if></cell><cell><b><frac>${l.main}</frac></b><#if l.also != ""> <frac>${l.also}</frac></#if></cell></row></#list>
</table>
</#macro>

<#-- As high as the steps beside it; the jars are the lower where room is dear. -->
<#macro pot pressure>
<#local h = set.pot, level = pressure?then(h - 6.4, 5), rim = pressure?then(8.4, 0.6)>
<drawing w="46" h="${h}" around="0" align="right" alt="${word(pressure?then("diagram.pressure", "diagram.boiling"))}">
  <rect x="7" y="${level}" w="32" h="${h - 1.4 - level}" fill="18%"/>
  <polygon points="6,${rim} 6,${h - 0.4} 40,${h - 0.4} 40,${rim}" closed="no" line="2.2"/>
  <#if pressure><rect x="4.6" y="6" w="36.8" h="2.4" radius="1" fill="black"/><rect x="21.9" y="3.8" w="2.2" h="2.8" fill="black"/>
  <#list [[23, 0], [20.4, 0.6], [25.6, 0.6]] as puff><line x1="23" y1="3.2" x2="${puff[0]}" y2="${puff[1]}" line="1.2"/></#list></#if>
  <line x1="8" y1="${h - 3.4}" x2="38" y2="${h - 3.4}" line="1.6"/>
  <#list 0..2 as j>
    <rect x="${8.6 + j * 9.9}" y="11.8" w="9" h="${h - 15.8}" radius="1.4" fill="white" line="1.2"/>
    <rect x="${9.6 + j * 9.9}" y="10" w="7" h="1.8" fill="black"/>
  </#list>
  <line x1="2" y1="${level}" x2="45" y2="${level}" line="1.6"/>
  <polygon points="42.6,${level} 41.4,${level - 2.6} 43.8,${level - 2.6}" fill="black"/>
</drawing>
</#macro>

<#-- The pot stands beside the first steps; the others may go on to the next side. -->
<#macro canner s n pressure>
<#local beside = [4, s.steps?size]?min>
<@head s n/>
<columns widths="* 46" gap="4" around="0"><column><@list s s.steps[0..<beside]/></column><column><@pot pressure/></column></columns>
<#if s.steps?size gt beside><@list s s.steps[beside..]/></#if>
</#macro>

<#macro doubts all>
<panel line="1.6" pad="${set.doubt}" around="${set.doubt}" size="${large?then(small, 11.5)}" leading="1.2">
<columns widths="* *" gap="5" around="0">
<column><#list all[0..1] as d><@doubt d/></#list></column>
<column><@doubt all[2]/></column>
</columns>
<#list all[3..] as d><@doubt d/></#list>
</panel>
</#macro>

<#macro doubt d><para before="0.2" after="0.2"><b>${d.title}:</b> <@plain d.runs/></para></#macro>

<#macro record s across>
<#list s.steps as one><#if one.kind == "record">
<fields gap="4" row-gap="0" around="${set.air}" size="${small + 1}"><#list one.fields as f><field caption="${f}" h="${set.field}" w="${(across == 2)?then([14, 12, 16, 12], large?then([12, 12, 20, 14], [14, 14, 22, 16]))[f?index]}"/></#list></fields>
</#if></#list>
</#macro>

<#-- For which altitudes this sheet holds, so large that another one is not taken for it. -->
<#macro band a>
<drawing w="48" h="${set.band}" around="0" alt=""><rect x="0" y="0" w="48" h="${set.band}" radius="1" fill="black"/><text x="1.5" y="0.2" w="45" h="${set.band - 0.4}" size="19" min="10" b="yes" ink="white" align="center" valign="middle" wrap="no">${a.band.main}</text></drawing>
</#macro>

<#function at feet><#return down * (1 - [[feet, 0]?max, 9000]?min / 9000)></#function>

<#macro ladder a>
<#local x = across + 3, w = 7>
<rect x="${x}" y="0" w="${w}" h="${down}" line="0.8"/>
<#local upper = (a.toFeet == 0)?then(0, at(a.toFeet)), lower = at((a.fromFeet == 0)?then(0, a.fromFeet - 1)), here = at(a.kitchenFeet)>
<#list a.ticks as t><#if t.feet lt a.fromFeet - 1 || (a.toFeet gt 0 && t.feet gte a.toFeet)><line x1="${x}" y1="${at(t.feet)}" x2="${x + 1.6}" y2="${at(t.feet)}" line="0.8"/><text x="${x + w - 0.6}" y="${at(t.feet) - 0.7}" align="right" size="7.5">${t.label}</text></#if></#list>
<rect x="${x}" y="${upper}" w="${w}" h="${lower - upper}" fill="black"/>
<polygon points="${x - 2.4},${here - 1.5} ${x - 0.3},${here} ${x - 2.4},${here + 1.5}" fill="black"/>
<text x="${x}" y="${upper + 1}" w="${w}" h="${lower - upper - 2}" turn="90" size="13" min="6" leading="1.05" b="yes" ink="white" align="center" valign="middle" hyphenate="no">${word("scale.altitude", {"band": a.band.main})}</text>
</#macro>

<#macro sides><b>${word("head.side")} <page/> ${word("head.of")} <pages/></b></#macro>

<#-- The first side says its name as a title; all say what the sheet is for and which side they are. -->
<#macro heads b>
<header on="first" size="11.5" leading="1.15" gap="${set.under}">
  <columns widths="* 48" gap="4" around="0" valign="middle">
    <column><para before="0" after="0">${b.pack} · ${b.jars} ${b.jarsOfSize} · ${b.method}</para><para before="0" after="0">${b.source} · <@sides/></para></column>
    <column><@band b.altitude/></column>
  </columns>
  <@lot b/>
  <rule line="2.2" around="0.4"/>
</header>
<header on="others" size="11.5" leading="1.15" gap="${set.under}">
  <columns widths="* 48" gap="4" around="0" valign="bottom">
    <column><para before="0" after="0" size="13.5" b="yes" leading="1.12">${b.name}</para></column>
    <column><@band b.altitude/></column>
  </columns>
  <columns widths="* 66" gap="2" around="0.3">
    <column>${b.pack} · ${b.jars} ${b.jarsOfSize} · ${b.method}</column>
    <column align="right">${b.source} · <@sides/></column>
  </columns>
  <@lot b/>
  <rule line="2.2" around="0.4"/>
</header>
</#macro>

<#macro lot b><#if b.dated><para before="0" after="0">${word("head.dated", {"lot": b.lot, "date": b.date, "useBy": b.useBy})}</para></#if></#macro>

<#macro checklist b>
<#assign notes = b.notes, times = b.times>
<section top="${margin}" bottom="${margin}" left="${left}" right="${right}" binding="${binding}" leading="${set.leading}" starts="sheet">
  <ground><@ladder b.altitude/></ground>
  <@heads b/>
  <body>
  <heading level="1" size="${set.title}" before="0" after="0.5" leading="1.08" bookmark="${b.product}">${b.name}<#if b.kinds != ""> <span size="${body - 1}" b="no">${b.kinds}</span></#if></heading>
  <#local n = 1, skip = "">
  <#if b.formula.lines?has_content><@formulaList b.formula/></#if>
  <#list b.sections as s>
    <#if skip != ""><#local skip = "">
    <#elseif s.id == "before" || s.id == "out"><#local other = b.sections[s?index + 1]><@both s other n><@doubts b.doubts/></@both><#local n += 2, skip = "other">
    <#elseif s?has_next && besides(s, b.sections[s?index + 1])><@pair s b.sections[s?index + 1] n/><#local n += 2, skip = "part">
    <#elseif set.whole?seq_contains(s.id) && b.loads lte 3 && b.jars lte 60><group><@section s n b.pressure/></group><#local n += 1>
    <#else><@section s n b.pressure/><#local n += 1></#if>
  </#list>
  </body>
</section>
</#macro>

<sheet size="${body}">
<#list batches as b>
<fit sides="2"><#list ways as way><#assign set = way><@checklist b/></#list></fit>
</#list>
</sheet>
