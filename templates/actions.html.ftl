<#-- What can be recorded of a jar, on its page when it is served live.
  actions    base (address of the jar), token, known (whether the code has been given), shelves,
             possible (take, check, move, toss, found, spoiled, vouch), signs (name, ask, short)
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
<#-- Every sign a question of its own, neither answer chosen before. -->
<#macro asked>
<#list actions.signs as sign><fieldset class="sign"><legend>${sign.ask}</legend>
<label><input type="radio" name="${sign.name}" value="no" required> ${word("record.no")}</label>
<label><input type="radio" name="${sign.name}" value="yes" required> ${word("record.yes")}</label>
</fieldset>
</#list>
</#macro>
<#macro ticked>
<fieldset class="sign"><legend>${word("web.signs")}</legend>
<#list actions.signs as sign><label><input type="checkbox" name="${sign.name}" value="yes"> ${sign.short}</label>
</#list></fieldset>
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
<#elseif does == "check">
<summary>${word("web.check")}</summary>
<p>${word("web.check-text")}</p>
<@form does="check" send=word("web.check-send")><@asked/></@form>
<#elseif does == "move">
<summary>${word("web.move")}</summary>
<@form does="move" send=word("web.move-send")><@shelffield id="move-to" label=word("web.move-to")/></@form>
<#elseif does == "toss">
<summary>${word("web.toss")}</summary>
<@form does="toss" send=word("web.toss-send")><label for="why">${word("web.toss-why")}</label><input id="why" name="why" maxlength="200" required><@ticked/></@form>
<#elseif does == "spoiled">
<summary>${word("web.spoiled")}</summary>
<p>${word("web.spoiled-text")}</p>
<@form does="spoiled" send=word("web.spoiled-send")><@ticked/><label for="seen">${word("web.spoiled-seen")}</label><input id="seen" name="seen" maxlength="200"></@form>
<#elseif does == "vouch">
<summary>${word("web.vouch")}</summary>
<p>${word("web.vouch-text")}</p>
<@form does="vouch" send=word("web.vouch-send")><label for="who">${word("web.vouch-who")}</label><input id="who" name="who" maxlength="80" required><label for="source">${word("web.vouch-source")}</label><input id="source" name="source" maxlength="200" required></@form>
<#else>
<summary>${word("web.found")}</summary>
<@form does="found" send=word("web.found-send")><@shelffield id="found-to" label=word("web.found-to")/></@form>
</#if>
</details>
</#list>
</#if>
</section>
</#if>
