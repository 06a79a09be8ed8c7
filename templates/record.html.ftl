<#-- The page of one lot, which the QR code on its jars leads to.
  title, household, lot, product, pack, jar (words), jars, packed, useBy, shelf, from, lids, note
  verdict    words, detail, stop (yes when it must not be eaten)
  facts      list of name, value: process, pressure, altitude, acid and so on
  loads      list of name, value: how the loads were planned or went
  list       list of number, id, state: the jars -->
<!DOCTYPE html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>${title}</title>
<style><#include "page.css.ftl"></style>
</head>
<body>
<nav><a href="index.html">${word("record.all")}</a></nav>
<main>
<h1>${product}</h1>
<p class="sub">${[pack, jar]?filter(w -> w?has_content)?join(" · ")}<#if household?has_content> · ${household}</#if></p>
<div class="verdict<#if verdict.stop> stop</#if>">${verdict.words}<#if verdict.detail?has_content> <small>${verdict.detail}</small></#if></div>
<h2>${word("record.lot")} ${lot}</h2>
<dl>
<#if packed?has_content><dt>${word("record.packed")}</dt><dd>${day("long", packed)}</dd></#if>
<#if useBy?has_content><dt>${word("record.use-by")}</dt><dd>${day("long", useBy)}</dd></#if>
<#if shelf?has_content><dt>${word("record.shelf")}</dt><dd>${shelf}</dd></#if>
<#if from?has_content><dt>${word("record.from")}</dt><dd>${from}</dd></#if>
<#if lids?has_content><dt>${word("record.lids")}</dt><dd>${lids}</dd></#if>
<#if note?has_content><dt>${word("record.note")}</dt><dd>${note}</dd></#if>
</dl>
<#if facts?has_content>
<h2>${word("record.process")}</h2>
<dl>
<#list facts as fact><dt>${fact.name}</dt><dd>${fact.value}</dd>
</#list></dl>
</#if>
<#if loads?has_content>
<h2>${word("record.loads")}</h2>
<dl>
<#list loads as load><dt>${load.name}</dt><dd>${load.value}</dd>
</#list></dl>
</#if>
<h2>${count("record.jars", jars)}</h2>
<ul class="jars">
<#list list as one><li id="jar-${one.number}"><b>${one.number}</b>${one.state}</li>
</#list></ul>
<p class="caution">${word("record.caution")}</p>
</main>
</body>
</html>
