<#-- Asks for the household code. title, said (about the last try), to (address), token, asOf -->
<#import "parts.html.ftl" as p>
<@p.page title=title>
<main>
<h1>${title}</h1>
<#if said?has_content><div class="says look" role="alert"><p class="words">${said}</p></div></#if>
<p>${word("web.code-text")}</p>
<form method="post" action="/code">
<input type="hidden" name="token" value="${token}">
<input type="hidden" name="to" value="${to}">
<label for="code">${word("web.code")}</label><input id="code" name="code" inputmode="numeric" maxlength="20" required autocomplete="off">
<button>${word("web.code-send")}</button>
</form>
</main>
</@p.page>
