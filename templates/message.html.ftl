<#-- A page that says one thing. title, text, says (tone, words, detail; may be missing), more, back (address),
  lines (name, value), indexHref, asOf -->
<#import "parts.html.ftl" as p>
<@p.page title=title>
<nav aria-label="${word("record.pages")}"><a href="${indexHref}">${word("record.all")}</a></nav>
<main>
<h1>${title}</h1>
<#if says??><@p.headline of=says/></#if>
<p>${text}</p>
<#if more!?has_content><p><b>${word("web.more")}:</b> ${more}</p></#if>
<#if lines?has_content><@p.lines list=lines/></#if>
<#if back!?has_content><p><a href="${back}">${word("web.back")}</a></p></#if>
<@p.foot/>
</main>
</@p.page>
