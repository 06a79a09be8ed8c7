<sheet>
  <labels shape="rounded-rect" columns="3" rows="10" w="66.675" h="25.4" left="4.7625" top="12.7" pitch-x="69.85" pitch-y="25.4" start="1" cut="0.5">
  <#list 1..labels as i>
    <#assign n = i?string("00")>
    <label>
      <text x="2" y="2" w="44" h="10" size="13" min="8" b="yes"><#if i % 3 == 0>Tomatoes, whole or halved, packed in water<#elseif i % 3 == 1>Plums<#else>Chrysanthemum-blossomed tomatillos</#if></text>
      <text x="2" y="12" w="44" h="11.5" size="9" min="6.5"><part b="yes" scale="1.2">260824A-X/${n}</part><part>use by 2027-08-24</part><part drop="1">packed 2026-08-24 · raw pack · quart · boiling water 25 min</part></text>
      <qr x="47" y="4" w="18" group="260824A" alt="LOT 260824A-X/${n}, use by 2027-08-24"><try>LOT 260824A-X/${n} USE BY 2027-08-24 PLUMS RAW QUART BOILING WATER 25 MIN 420 M</try><try>LOT 260824A-X/${n} USE BY 2027-08-24 PLUMS</try><try>LOT 260824A-X/${n} USE BY 2027-08-24</try></qr>
    </label>
  </#list>
  </labels>
</sheet>
