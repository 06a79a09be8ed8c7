<#-- The page of one lot.
  title, household, asOf, indexHref
  lot, product, pack, jar (words), packed, useBy, from, lids, note, madeHere
  jars       how many
  groups     list of headline (tone, words, detail), place, numbers (number, href): jars alike
  facts      list of name, value: process, pressure, altitude, acid and so on
  loads      list of name, jars, done, lines (name, value): as planned or as they went
  history    list of number, when, what, jars, by: the ledger's events -->
<#import "parts.html.ftl" as p>
<@p.page title=title>
<nav aria-label="${word("record.pages")}"><a href="${indexHref}">${word("record.all")}</a></nav>
<main>
<h1>${product}</h1>
<p class="sub"><@p.dotted list=[pack, jar, household]/></p>
<p class="code">${word("record.lot")} ${lot}</p>
<h2>${count("record.jars", jars)}</h2>
<#list groups as group>
<@p.headline of=group.headline numbers=group.numbers place=group.place/>
</#list>
<h2>${word("record.batch")}</h2>
<dl>
<@p.lotfacts/>
</dl>
<@p.process/>
<#if loads?has_content>
<h2>${word("record.loads")}</h2>
<@p.loadlist loads=loads/>
</#if>
<@p.ledger/>
<@p.foot/>
</main>
</@p.page>
