<sheet>
  <labels shape="rounded-rect" columns="3" rows="10" w="66.675" h="25.4" left="4.7625" top="12.7" pitch-x="69.85" pitch-y="25.4" start="2" cut="0.5">
  <#list 1..40 as i>
    <#assign n = i?string("00")>
    <label>
      <text x="2" y="2" w="44" h="10" size="13" min="8" b="yes"><#if i % 3 == 0>Tomatoes, whole or halved, packed in water<#elseif i % 3 == 1>Plums<#else>Chrysanthemum-blossomed tomatillos</#if></text>
      <text x="2" y="12" w="44" h="11.5" size="9" min="6.5"><part b="yes" scale="1.2">260824A-X/${n}</part><part>use by 2027-08-24</part><part drop="1">packed 2026-08-24 · raw pack · quart · boiling water 25 min</part></text>
      <qr x="47" y="4" w="18" group="260824A" alt="LOT 260824A-X/${n}, use by 2027-08-24"><try>LOT 260824A-X/${n} USE BY 2027-08-24 PLUMS RAW QUART BOILING WATER 25 MIN 420 M</try><try>LOT 260824A-X/${n} USE BY 2027-08-24 PLUMS</try><try>LOT 260824A-X/${n} USE BY 2027-08-24</try></qr>
    </label>
  </#list>
  </labels>
  <section>
   <body>
    <heading>Drawing</heading>
    <drawing w="180" h="120" alt="The day as a timeline" size="9">
      <rect x="0" y="0" w="180" h="120" line="0.5"/>
      <#list 8..14 as h><line x1="12" x2="180" y1="${(h-8)*17+5}" y2="${(h-8)*17+5}" line="0.5" dash="1"/><text x="10" y="${(h-8)*17+6}" align="right">${h}:00</text></#list>
      <rect x="20" y="15" w="30" h="40" fill="black"/><text x="20" y="15" w="30" h="40" ink="white" size="14" min="7" align="center" valign="middle">Process 25 min</text>
      <rect x="60" y="15" w="30" h="40" hatch="2"/><rect x="90" y="15" w="30" h="40" fill="15%" line="1"/>
      <text x="90" y="15" w="10" h="40" turn="90" size="10" align="center">turned up</text>
      <text x="110" y="15" w="10" h="40" turn="-90" size="10" align="center">turned down</text>
      <circle cx="140" cy="30" r="10" line="1.5"/><arc cx="140" cy="60" r="10" from="0" to="120" sector="yes" fill="black"/><arc cx="140" cy="60" r="10" from="0" to="300" line="1"/>
      <polygon points="160,20 170,40 150,40" hatch="1.5" line="1"/>
      <#list ["tick","cross","warning","clock","arrow","drop"] as s><sign name="${s}" x="${60+s?index*14}" y="80" size="10"/></#list>
    </drawing>
   </body>
  </section>
</sheet>
