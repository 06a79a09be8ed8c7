<#-- The page of one jar, which its QR code leads to.
  As record.html.ftl, and
  id         lot and number
  lotHref    the page of its lot
  shelf      where it stands; may be empty
  headline   tone, words, detail
  reasons    list of text, sources: why the large words say so
  outcome    list of name, value: how it came out of the canner
  actions    what can be recorded, only where the page is served live; see actions.html.ftl -->
<#import "parts.html.ftl" as p>
<@p.page title=title>
<nav aria-label="${word("record.pages")}"><a href="${indexHref}">${word("record.all")}</a> <a href="${lotHref}">${word("record.lot")} ${lot}</a></nav>
<main>
<h1>${product}</h1>
<p class="sub"><@p.dotted list=[pack, jar, household]/></p>
<p class="code">${id}</p>
<@p.headline of=headline/>
<#if !actions??><p class="sub">${word("record.copy", {"date": day("long", asOf)})}</p></#if>
<#if reasons?has_content>
<h2>${word("record.why")}</h2>
<ul>
<#list reasons as reason><li>${reason.text}<#list reason.sources as source><br><small>${word("record.source", {"source": source})}</small></#list></li>
</#list></ul>
</#if>
<#if actions??><#include "actions.html.ftl"></#if>
<h2>${word("record.jar")}</h2>
<dl>
<@p.fact name=word("record.shelf") value=shelf/>
<@p.lotfacts/>
</dl>
<#if outcome?has_content>
<h2>${word("record.outcome")}</h2>
<@p.lines list=outcome/>
<@p.loadlist loads=loads/>
</#if>
<@p.process/>
<@p.ledger/>
<@p.foot/>
</main>
</@p.page>
