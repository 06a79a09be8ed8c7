<#ftl output_format="XML">
<#-- The jar labels, one per jar.

  stock    the label stock: id, shape, columns, rows, and in mm w, h, left, top, pitch-x, pitch-y
  right, down, scale   the printer's correction;  start: the first free label;  cut: weight of a frame to cut along, or 0
  areas    where things stand on a label of this stock, in mm from its upper left corner:
             arrangement   beside | stacked | tower | around | round
             name, ids, code, months   each with x, y, w, h;  facts the same, if there is room beside the ids
             together      yes on a small round label, where name and ids are one area
             ring          width of a round label's ring of months; else 0
             dial          the twelve months of that ring: from, to in degrees clockwise from straight up; x, y of the letter's
                           middle in mm from the upper left corner of months
  bend     mm across of the slimmest jar that the label is bent round; 0 for a lid
  labels   of each jar:
             title, rest, note   the product's name in three parts, as "Tomatoes", "whole or halved", "green"; the last two may be empty
             lot, jar            as 260824A-T and 260824A-T/03
             packed, useBy       dates as 2026-08-24; packed may be empty
             month, year, day    of the use-by date: 1 to 12; as text; month and day as text
             facts               lines on the process, the weightiest first; may be none
             cold, days          yes for a jar that belongs in the refrigerator, and for how many days; else no, 0
             codes               texts for the code, the richest first -->
<#assign name = areas.name, ids = areas.ids, code = areas.code, months = areas.months, round = areas.ring gt 0>
<#assign along = round?then("center", "left")>
<#-- Points in a millimetre. -->
<#assign pt = 72 / 25.4>
<#assign titleSize = [[name.h * pt * 0.82, 36]?min, 6]?max, small = [[ids.h * pt / (ids.h lt 12 && (areas.facts?? || round))?then(3.5, 4.6), ids.w * pt / 8.6, 12]?min, 6.5]?max>

<#-- The names of what was drawn already. -->
<#assign drawn = {}>

<#-- The month and year of the use-by date. All labels of one month show the same picture, drawn once. -->
<#assign monthsBox> x="${months.x}" y="${months.y}" w="${months.w}" h="${months.h}"</#assign>
<#macro monthOf label>
  <#local key = label.year + "-" + label.month>
  <picture name="${key}"${monthsBox} alt="${word("label.month.alt", {"month": word("month." + label.month), "year": label.year})}">
    <#if !drawn[key]??>
      <#assign drawn = drawn + {key: true}>
      <#if round><@dial label.month label.year/><#elseif rulerStep lt months.h * 0.42><@rows label.month label.year/><#else><@ruler label.month label.year/></#if>
    </#if>
  </picture>
</#macro>

<#-- A ruler of months: the month in question opens out of it, black, with the year at the end. -->
<#assign rulerYear = months.h * 2.35, rulerTab = months.h * 2.2, rulerStep = (months.w - rulerYear - months.h * 0.25 - rulerTab) / 11>
<#macro ruler month year>
  <#local s = months.h, tab = rulerTab, step = rulerStep>
  <#list 1..12 as m>
    <#local left = (m lte month)?then((m - 1) * step, (m - 2) * step + tab)>
    <#if m == month>
      <rect x="${left}" y="0" w="${tab}" h="${s}" fill="black"/>
      <text x="${left}" y="0" w="${tab}" h="${s}" size="${s * pt * 0.95}" min="6" leading="1" b="yes" ink="white" align="center" valign="middle" wrap="no">${word("month.short." + m)?upper_case}</text>
    <#else>
      <text x="${left}" y="${s * 0.26}" w="${step}" h="${s * 0.66}" size="${[s * pt * 0.54, 6]?max}" min="6" align="center" valign="middle" wrap="no">${word("label.letter." + m)}</text>
    </#if>
  </#list>
  <line x1="0" y1="${s - 0.15}" x2="${11 * step + tab}" y2="${s - 0.15}" line="0.9"/>
  <text x="${months.w - rulerYear}" y="0" w="${rulerYear}" h="${s}" size="${s * pt}" min="6" leading="1" b="yes" align="right" valign="middle" wrap="no">${year}</text>
</#macro>

<#-- The same on a narrow label: six months above six. -->
<#macro rows month year>
  <#local s = months.h, yearW = [s * 2, months.w * 0.36]?min, step = (months.w - yearW - 1) / 6, row = s / 2>
  <#list 1..12 as m>
    <#local left = ((m - 1) % 6) * step, top = (m gt 6)?then(row, 0), it = m == month>
    <rect x="${left}" y="${top}" w="${step}" h="${row}"<#if it> fill="black"<#else> line="0.5"</#if>/>
    <text x="${left}" y="${top}" w="${step}" h="${row}" size="${[[row * pt * 0.8, step * pt]?min, 6]?max}" min="6" b="${it?string("yes", "no")}" ink="${it?string("white", "black")}" align="center" valign="middle" wrap="no">${word("label.letter." + m)}</text>
  </#list>
  <text x="${months.w - yearW}" y="0" w="${yearW}" h="${s}" size="${s * pt}" min="6" b="yes" align="right" valign="middle" wrap="no">${year}</text>
</#macro>

<#-- The months as a dial, January to the left of the foot, where the year stands. -->
<#macro dial month year>
  <#local d = months.w, r = d / 2, w = areas.ring>
  <arc cx="${r}" cy="${r}" r="${r - 0.15}" from="${areas.dial[0].from}" to="${areas.dial[11].to}" line="0.9"/>
  <#list areas.dial as at>
    <#local it = at?counter == month>
    <#if it><arc cx="${r}" cy="${r}" r="${r - w / 2}" from="${at.from}" to="${at.to}" line="${w * pt}"/></#if>
    <text x="${at.x - w}" y="${at.y - w / 2}" w="${2 * w}" h="${w}" size="${w * pt * 0.85}" min="6" leading="1" b="${it?string("yes", "no")}" ink="${it?string("white", "black")}" align="center" valign="middle" wrap="no">${word("label.letter." + at?counter)}</text>
  </#list>
  <@foot year/>
</#macro>

<#-- Words where the ring is open. -->
<#macro foot words><text x="${months.w / 2 - 3 * areas.ring}" y="${months.h - areas.ring - 0.4}" w="${6 * areas.ring}" h="${areas.ring}" size="${areas.ring * pt * 1.05}" min="6" leading="1" b="yes" align="center" valign="middle" wrap="no">${words}</text></#macro>

<#-- In place of the months, what tells a jar of the refrigerator from those of the shelf. -->
<#macro band label>
  <#local s = months.h, by = word("label.cold.by", {"date": label.day})?upper_case, keep = word("label.cold")?upper_case>
  <#if round>
    <#local r = months.w / 2, w = areas.ring>
    <picture x="${months.x}" y="${months.y}" w="${months.w}" h="${months.h}" alt="">
      <arc cx="${r}" cy="${r}" r="${r - w / 2}" from="${areas.dial[0].from}" to="${areas.dial[11].to}" line="${w * pt}"/>
      <@foot label.day/>
    </picture>
  <#else>
    <#local narrow = months.w lt s * 9, left = months.x + s * 0.35, wide = months.w - s * 0.7>
    <rect x="${months.x}" y="${months.y}" w="${months.w}" h="${s}" fill="black"/>
    <#if narrow>
      <text x="${left}" y="${months.y}" w="${wide}" h="${s}" size="${[s * pt * 0.45, 6]?max}" min="6" leading="1" b="yes" ink="white" valign="middle"><part>${keep}</part><part>${by}</part></text>
    <#else>
      <text x="${left}" y="${months.y}" w="${wide / 2}" h="${s}" size="${s * pt * 0.8}" min="6" b="yes" ink="white" valign="middle" wrap="no">${keep}</text>
      <text x="${left + wide / 2}" y="${months.y}" w="${wide / 2}" h="${s}" size="${s * pt * 0.8}" min="6" b="yes" ink="white" align="right" valign="middle" wrap="no">${by}</text>
    </#if>
  </#if>
</#macro>

<#-- A phrase in one line, if the language has a short one; a date is never cut. -->
<#assign unbroken = 20>
<#macro kept phrase><#if phrase?length lte unbroken><keep>${phrase}</keep><#else>${phrase}</#if></#macro>

<#-- The date that decides: bold and up to a quarter larger than what stands with it, as far as its line has room. -->
<#macro last label size w whole=1><#local by = word(label.cold?then("label.cold.by", "label.use-by"), {"date": label.useBy}), room = w * pt / ([by?length, unbroken]?min * 0.5 * size)><part b="${(room gte 1)?string("yes", "no")}" scale="${[[room, 1]?max, 1.28]?min * whole}"><@kept by/></part></#macro>

<#macro who label><part><keep>${label.jar}</keep></part><@last label small ids.w/><#if label.cold><part><@kept count("label.cold.within", label.days)/></part></#if><#if label.packed?has_content><part drop="5"><keep>${word("label.packed", {"date": label.packed})}</keep></part></#if></#macro>

<#macro facts label><#list label.facts as f><part drop="${10 + f?index}">${f}</part></#list></#macro>

<#-- All words of a small round label in one box, so that a long name takes from the rest and not from its own size. -->
<#macro inside label>
  <#local big = [name.h * pt * 0.3, 24]?min, small = [[name.h * pt * 0.13, 11]?min, 6.5]?max>
  <#local more = label.rest?has_content || label.cold>
  <text x="${name.x}" y="${name.y}" w="${name.w}" h="${name.h}" size="${big}" min="6" drop-below="${more?then(6, [big * 0.75, 6]?max)}" leading="1.03" align="center" valign="middle"><part b="yes">${label.title}</part><#if label.rest?has_content><part scale="0.6" drop="6">${label.rest}</part></#if><#if label.note?has_content && !more><part scale="0.45" drop="20">${label.note}</part></#if><part scale="${small / big}"><keep>${label.jar}</keep></part><@last label small name.w small / big/><#if label.cold><part drop="1" scale="${small / big}"><@kept count("label.cold.within", label.days)/></part></#if><#if label.packed?has_content && !more><part drop="7" scale="${small / big}"><keep>${word("label.packed", {"date": label.packed})}</keep></part></#if></text>
</#macro>

<#-- What is the same on all labels of a lot is set once, under a name, and repeated by that name. -->
<#macro again name><text name="${name}"<#if drawn[name]??>/><#else><#assign drawn = drawn + {name: true}><#nested></#if></#macro>

<#assign nameBox> x="${name.x}" y="${name.y}" w="${name.w}" h="${name.h}" size="${titleSize}" min="6" drop-below="${[titleSize * 0.66, 6]?max}" leading="1.04" b="yes" align="${along}" valign="${round?then("middle", "top")}"</#assign>
<#assign idsBox> x="${ids.x}" y="${ids.y}" w="${ids.w}" h="${ids.h}" size="${small}" min="6" drop-below="${[small * 0.85, 6]?max}" leading="1.12" align="${along}" valign="${(round || areas.facts??)?then("top", "bottom")}"</#assign>
<#assign factsBox><#if areas.facts??> x="${areas.facts.x}" y="${areas.facts.y}" w="${areas.facts.w}" h="${areas.facts.h}" size="${small}" min="6" drop-below="${[small * 0.85, 6]?max}" leading="1.12" valign="top"</#if></#assign>

<#macro outside label>
  <@again "name|" + label.title + "|" + label.rest + "|" + label.note>${nameBox}><part>${label.title}</part><#if label.rest?has_content><part scale="0.62" b="no">${label.rest}</part></#if><#if label.note?has_content><part scale="0.48" b="no" drop="9">${label.note}</part></#if></text></@again>
  <text${idsBox}><@who label/><#if !areas.facts??><@facts label/></#if></text>
  <#if areas.facts?? && label.facts?has_content>
    <@again "facts|" + label.facts?join("|")>${factsBox}><@facts label/></text></@again>
  </#if>
</#macro>

<#assign codeBox> x="${code.x}" y="${code.y}" w="${code.w}" bend="${bend}"</#assign>

<#macro face label>
  <#if areas.together><@inside label/><#else><@outside label/></#if>
  <qr${codeBox} group="${label.lot}" alt="${word("label.alt", {"jar": label.jar, "date": label.useBy})}"><#list label.codes as c><try>${c}</try></#list></qr>
  <#if label.cold><@band label/><#else><@monthOf label/></#if>
</#macro>

<sheet>
  <labels id="${stock.id}" shape="${stock.shape}" columns="${stock.columns}" rows="${stock.rows}" w="${stock.w}" h="${stock.h}" left="${stock.left}" top="${stock.top}" pitch-x="${stock["pitch-x"]}" pitch-y="${stock["pitch-y"]}" start="${start}" right="${right}" down="${down}" scale="${scale}" cut="${cut}">
    <#list labels as label>
    <label><@face label/></label>
    </#list>
  </labels>
</sheet>
