<#-- What can be recorded of a jar, on its page when it is served live.
  actions    base (address of the jar), token, known (whether the code has been given), shelves,
             possible (take, move, toss, found)
  A macro must not be called as a value of the page is: it would hide it. -->
<#macro form does send>
<form method="post" action="${actions.base}/${does}">
<input type="hidden" name="token" value="${actions.token}">
<#nested>
<label for="by-${does}">${word("web.by")}</label><input id="by-${does}" name="by" maxlength="40" autocomplete="nickname">
<button>${send}</button>
</form>
</#macro>
<#macro shelffield id label>
<label for="${id}">${label}</label><input id="${id}" name="to" list="shelves" maxlength="80" required autocomplete="off">
</#macro>
<#if actions.possible?has_content>
<section class="act">
<h2>${word("web.record")}</h2>
<#if !actions.known>
<p>${word("web.code-first")}</p>
<form method="post" action="/code">
<input type="hidden" name="token" value="${actions.token}">
<input type="hidden" name="to" value="${actions.base}">
<label for="code">${word("web.code")}</label><input id="code" name="code" inputmode="numeric" maxlength="20" required autocomplete="off">
<button>${word("web.code-send")}</button>
</form>
<#else>
<datalist id="shelves"><#list actions.shelves as shelf><option value="${shelf}"></option></#list></datalist>
<#list actions.possible as does>
<details<#if does?is_first> open</#if>>
<#if does == "take">
<summary>${word("web.take")}</summary>
<@form does="take" send=word("web.take")><label for="note">${word("web.take-note")}</label><input id="note" name="note" maxlength="200"></@form>
<#elseif does == "move">
<summary>${word("web.move")}</summary>
<@form does="move" send=word("web.move-send")><@shelffield id="move-to" label=word("web.move-to")/></@form>
<#elseif does == "toss">
<summary>${word("web.toss")}</summary>
<@form does="toss" send=word("web.toss-send")><label for="why">${word("web.toss-why")}</label><input id="why" name="why" maxlength="200" required></@form>
<#else>
<summary>${word("web.found")}</summary>
<@form does="found" send=word("web.found-send")><@shelffield id="found-to" label=word("web.found-to")/></@form>
</#if>
</details>
</#list>
</#if>
</section>
</#if>
