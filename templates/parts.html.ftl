<#-- Parts that the record pages share. -->
<#macro page title script=false>
<!DOCTYPE html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>${title}</title>
<link rel="icon" href="data:,">
<style><#include "page.css.ftl"></style>
</head>
<body>
<#nested>
<#if script>
<script><#include "search.js.ftl"></script>
</#if>
</body>
</html>
</#macro>

<#-- Words with a dot between those that are there. -->
<#macro dotted list>${list?filter(w -> w?has_content)?join(" · ")}</#macro>

<#-- The large words of a jar, or of several alike. -->
<#macro headline of numbers=[] place="">
<div class="says ${of.tone}">
<p class="words">${of.words}</p>
<#if of.detail?has_content><p>${of.detail}</p></#if>
<#if place?has_content><p>${word("record.shelf")}: ${place}</p></#if>
<#if numbers?has_content><@jarlist numbers=numbers/></#if>
</div>
</#macro>

<#-- Numbers of jars, each leading to its page where it has one. -->
<#macro jarlist numbers>
<ul class="jars" aria-label="${word("record.jar-list")}">
<#list numbers as one><li id="jar-${one.number}"><#if one.href?has_content><a href="${one.href}">${one.number}</a><#else>${one.number}</#if></li>
</#list></ul>
</#macro>

<#-- A list of name and value. -->
<#macro lines list>
<dl>
<#list list as line><div><dt>${line.name}</dt><dd>${line.value}</dd></div>
</#list></dl>
</#macro>

<#macro fact name value><#if value?has_content><div><dt>${name}</dt><dd>${value}</dd></div></#if></#macro>

<#-- What is the same for all jars of a lot. -->
<#macro lotfacts>
<@fact name=word("record.packed") value=packed?has_content?then(day("long", packed), "")/>
<@fact name=word("record.use-by") value=useBy?has_content?then(day("long", useBy), "")/>
<@fact name=word("record.from") value=from/>
<@fact name=word("record.lids") value=lids/>
<@fact name=word("record.note") value=note/>
</#macro>

<#macro process>
<#if facts?has_content>
<h2>${word("record.process")}</h2>
<@lines list=facts/>
</#if>
</#macro>

<#macro loadlist loads>
<#list loads as load>
<h3>${load.name}<#if load.jars?has_content> · ${load.jars}</#if></h3>
<#if load.done><@lines list=load.lines/><#else><p>${word("record.load-open")}</p></#if>
</#list>
</#macro>

<#macro ledger>
<#if history?has_content>
<h2>${word("record.history")}</h2>
<ol class="history">
<#list history as line><li value="${line.number}"><b>${line.what}</b><br><@dotted list=[line.when, line.jars?has_content?then(word("record.history-jars", {"jars": line.jars}), ""), line.by]/></li>
</#list></ol>
</#if>
</#macro>

<#macro foot>
<p class="caution">${word("record.caution")}</p>
<p class="sub">${word("record.as-of", {"date": day("long", asOf)})}</p>
</#macro>
