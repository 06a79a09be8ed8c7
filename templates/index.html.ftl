<#-- The list of all jars and lots.
  title, household, asOf
  urgent     rows of jars that somebody should see to
  places     list of name, jars, rows: by shelf
  months     list of name, jars, rows: by use-by date
  lots       list of href, product, pack, jar, lot, packed, useBy, jars, here
  A row is a lot's jars alike: href, product, pack, jar, lot, useBy, place, headline, numbers -->
<#import "parts.html.ftl" as p>
<#macro rows list place>
<ul class="rows">
<#list list as row><li class="row">
<p class="what"><a href="${row.href}">${row.product}</a> <span class="sub"><@p.dotted list=[row.pack, row.jar, row.lot]/></span></p>
<p class="mark ${row.headline.tone}">${row.headline.words}</p>
<#if place><p class="sub">${word("record.shelf")}: ${row.place}</p><#elseif row.useBy?has_content && row.headline.tone != "good"><p class="sub">${word("record.use-by")} ${day("long", row.useBy)}</p></#if>
<ul class="jars" aria-label="${word("record.jar-list")}"><#list row.numbers as one><li><#if one.href?has_content><a href="${one.href}">${one.number}</a><#else>${one.number}</#if></li></#list></ul>
</li>
</#list></ul>
</#macro>
<@p.page title=title script=true>
<nav aria-label="${word("record.pages")}"><a href="#shelves">${word("record.by-shelf")}</a> <a href="#use-by">${word("record.by-use-by")}</a> <a href="#lots">${word("record.all")}</a></nav>
<main>
<h1>${title}</h1>
<#if household?has_content><p class="sub">${household}</p></#if>
<p class="search" hidden><label for="search">${word("record.search")}</label><input id="search" type="search" autocomplete="off" spellcheck="false"><span id="found" role="status" data-none="${word("record.search-none")}"></span></p>
<#if urgent?has_content>
<section>
<h2>${word("record.urgent")}</h2>
<@rows list=urgent place=true/>
</section>
</#if>
<section>
<h2 id="shelves">${word("record.by-shelf")}</h2>
<#if !places?has_content><p>${word("record.no-jars")}</p></#if>
<#list places as section><section>
<h3>${section.name} <span class="sub">${count("record.jars", section.jars)}</span></h3>
<@rows list=section.rows place=false/>
</section></#list>
</section>
<section>
<h2 id="use-by">${word("record.by-use-by")}</h2>
<#list months as section><section>
<h3>${section.name} <span class="sub">${count("record.jars", section.jars)}</span></h3>
<@rows list=section.rows place=true/>
</section></#list>
</section>
<section>
<h2 id="lots">${word("record.all")}</h2>
<ul class="rows">
<#list lots as lot><li class="row">
<p class="what"><a href="${lot.href}">${lot.product}</a> <span class="sub"><@p.dotted list=[lot.pack, lot.jar, lot.lot]/></span></p>
<p class="sub"><@p.dotted list=[lot.packed?has_content?then(word("record.packed") + " " + day("long", lot.packed), ""), word("record.here", {"here": lot.here, "jars": lot.jars})]/></p>
</li>
</#list></ul>
</section>
<@p.foot/>
</main>
</@p.page>
