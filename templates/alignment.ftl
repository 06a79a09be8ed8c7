<#ftl output_format="XML">
<#-- The alignment page of a label stock: one canvas as large as the paper, printed with the correction in force.

  stock    the label stock: id, shape, columns, rows, and in mm w, h, left, top, pitch-x, pitch-y
  paper    the sheet in mm: w, h
  right, down, scale   the printer's correction in force
  now      right and down as words write them
  labels   the upper left corner of each label in mm: x, y
  across   two upright label edges, at a label's half height: x, y is where a ruler has its zero
  along    two level label edges, at a label's half width
  bar      the length of the bar to measure, in mm; 0 on a sheet too small for one
  scales   what to write when the bar measures so many mm: measured, percent -->
<#assign panelW = [124, paper.w - 30]?min, panelX = (paper.w - panelW) / 2, panelH = [104, paper.h * 0.5]?min, panelY = (paper.h - panelH) / 2>
<#assign barX = paper.w - 20, barY = (paper.h - bar) / 2>

<#-- A ruler in half millimetres, five each way. -->
<#macro level at>
  <line x1="${at.x}" y1="${at.y - 7}" x2="${at.x}" y2="${at.y + 7}" line="0.75"/>
  <line x1="${at.x - 5}" y1="${at.y}" x2="${at.x + 5}" y2="${at.y}" line="0.5"/>
  <#list -10..10 as i>
    <#local x = at.x + i / 2, long = (i % 4 == 0)?then(2.4, (i % 2 == 0)?then(1.6, 0.9))>
    <line x1="${x}" y1="${at.y - long}" x2="${x}" y2="${at.y}" line="0.5"/>
    <#if i % 8 == 0 && i != 0><text x="${x}" y="${at.y + 3}" size="7" align="center"><#if i gt 0>+</#if>${(i / 2)?string?replace("-", "−")}</text></#if>
  </#list>
</#macro>

<#macro upright at>
  <line x1="${at.x - 7}" y1="${at.y}" x2="${at.x + 7}" y2="${at.y}" line="0.75"/>
  <line x1="${at.x}" y1="${at.y - 5}" x2="${at.x}" y2="${at.y + 5}" line="0.5"/>
  <#list -10..10 as i>
    <#local y = at.y + i / 2, long = (i % 4 == 0)?then(2.4, (i % 2 == 0)?then(1.6, 0.9))>
    <line x1="${at.x - long}" y1="${y}" x2="${at.x}" y2="${y}" line="0.5"/>
    <#if i % 8 == 0 && i != 0><text x="${at.x + 1}" y="${y + 0.8}" size="7"><#if i gt 0>+</#if>${(i / 2)?string?replace("-", "−")}</text></#if>
  </#list>
</#macro>

<#macro label at>
  <#if stock.shape == "circle">
    <circle cx="${at.x + stock.w / 2}" cy="${at.y + stock.h / 2}" r="${stock.w / 2}" line="0.5" ink="60%"/>
  <#else>
    <rect x="${at.x}" y="${at.y}" w="${stock.w}" h="${stock.h}" radius="${(stock.shape == "rounded-rect")?then(2, 0)}" line="0.5" ink="60%"/>
  </#if>
</#macro>

<#macro step n><part size="6">&#160;</part><part><b>${n}</b>&#160; <#nested></part></#macro>

<sheet>
  <labels id="${stock.id}" shape="rect" columns="1" rows="1" w="${paper.w}" h="${paper.h}" left="0" top="0" pitch-x="${paper.w}" pitch-y="${paper.h}" right="${right}" down="${down}" scale="${scale}">
    <label>
      <picture x="0" y="0" w="${paper.w}" h="${paper.h}" alt="">
        <#list labels as at><@label at/></#list>
        <#list across as at><@level at/></#list>
        <#list along as at><@upright at/></#list>
        <#if bar gt 0>
          <line x1="${barX}" y1="${barY}" x2="${barX}" y2="${barY + bar}" line="1.5"/>
          <line x1="${barX - 3}" y1="${barY}" x2="${barX + 3}" y2="${barY}" line="0.5"/>
          <line x1="${barX - 3}" y1="${barY + bar}" x2="${barX + 3}" y2="${barY + bar}" line="0.5"/>
          <text x="${barX - 1.5}" y="${paper.h / 2}" size="10" b="yes" turn="90" align="center">${word("align.bar", {"length": bar})}</text>
        </#if>
        <rect x="${panelX}" y="${panelY}" w="${panelW}" h="${panelH}" fill="white" line="1.5"/>
      </picture>
      <text x="${panelX + 5}" y="${panelY + 4}" w="${panelW - 10}" h="10" size="15" min="8" b="yes">${word("align.title", {"stock": stock.id})}</text>
      <text x="${panelX + 5}" y="${panelY + 13}" w="${panelW - 10}" h="${panelH - 16}" size="11" min="6" leading="1.15" valign="middle">
        <@step n=1>${word("align.step.print")}</@step>
        <#if bar gt 0>
        <@step n=2>${word("align.step.measure", {"length": bar})}</@step>
        <#list scales as s><part b="yes" scale="0.95">${word("align.scale", {"measured": s.measured, "percent": s.percent})}</part></#list>
        </#if>
        <@step n=3>${word("align.step.hold")}</@step>
        <@step n=4>${word("align.step.right", {"now": now.right})}</@step>
        <@step n=5>${word("align.step.down", {"now": now.down})}</@step>
        <@step n=6>${word("align.step.again")}</@step>
      </text>
    </label>
  </labels>
</sheet>
