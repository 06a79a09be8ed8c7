<#-- A changed checklist, as an example: one plain numbered list in a frame of one colour, for a clipboard.
     The values that it may use stand at the head of the program's own templates/checklist.ftl. Use it by
         jarwright kit samples/plum-day.yaml --templates samples/templates
     Change what you like, but keep every step, figure and caution: the food is safe by them. -->
<#macro runs of><#list of as r><#if r.amount><b><frac>${r.text}</frac></b><#else>${r.text}</#if></#list></#macro>

<sheet size="12" accent="#0b4f6c">
<#list batches as b>
  <section margin="14" left="22" starts="sheet">
    <header size="10">${b.name} · ${b.pack} · ${b.jars} ${b.jarsOfSize} · ${b.method} · ${b.altitude.band.main} · ${b.source} · ${word("head.side")} <page/> ${word("head.of")} <pages/></header>
    <body>
      <heading size="22" ink="accent">${b.product}</heading>
      <#list b.formula.lines as l><para before="0" after="0.5"><b>${l.ingredient}</b> <frac>${l.main}</frac> ${l.also} ${l.note}</para></#list>
      <#list b.sections as s>
      <heading level="2" size="14" ink="accent">${s.title}</heading>
      <steps numbered="yes" box="6" gap="1">
        <#list s.steps as step>
        <step figure="${step.figure.main}" also="${step.figure.also}" line="${(step.kind == "wait" || step.kind == "clock")?then("thick", "thin")}">
          <para before="0" after="0"><@runs step.runs/></para>
          <#if step.kind == "gauge"><para before="0" after="0"><#list step.depths as d><figure>${d.main}</figure> ${d.also} ${d.to}<#sep>, </#list></para></#if>
          <#if step.kind == "tally"><marks count="${step.jars}" size="7"/></#if>
          <#if step.kind == "clock">
          <readings size="11"><reading value="${step.minutes}" unit="${word("clock.minutes")}" caption=""/><#if step.pressure.main != ""><reading value="${step.pressure.main}" unit="" caption="${step.pressure.also}"/></#if></readings>
          <#list step.loads as jars><para before="1" after="0">${word("clock.jars", {"load": jars?index + 1, "n": jars})}</para><fields><#list step.fields as f><field caption="${f}" w="16"/></#list></fields></#list>
          <#list b.notes as note><para>${note}</para></#list>
          </#if>
          <#if step.kind == "record"><fields><#list step.fields as f><field caption="${f}" w="16"/></#list></fields></#if>
          <#if step.caution != ""><caution brief="yes">${step.caution}</caution></#if>
        </step>
        </#list>
      </steps>
      </#list>
      <panel line="1.5" frame="accent"><#list b.doubts as d><para><b>${d.title}:</b> <@runs d.runs/></para></#list></panel>
    </body>
  </section>
</#list>
</sheet>
