<#-- The list of all record pages.
  title, household
  lots       list of lot, href, product, pack, jar, packed, useBy, jars, shelf, state -->
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
<main>
<h1>${title}</h1>
<#if household?has_content><p class="sub">${household}</p></#if>
<table>
<thead><tr><th scope="col">${word("record.product")}</th><th scope="col">${word("record.use-by")}</th><th scope="col">${word("record.shelf")}</th></tr></thead>
<tbody>
<#list lots as one><tr><td><a href="${one.href}">${one.product}</a><br>${[one.pack, one.jar]?filter(w -> w?has_content)?join(" · ")} · ${one.lot} · ${count("record.jars", one.jars)}</td><td><#if one.useBy?has_content>${day("short", one.useBy)}</#if></td><td>${one.shelf}</td></tr>
</#list></tbody>
</table>
<p class="caution">${word("record.caution")}</p>
</main>
</body>
</html>
