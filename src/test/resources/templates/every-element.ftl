<#-- Uses every element of the sheet markup at least once; its figures are made up. -->
<sheet size="13" accent="#0b4f6c">
  <section margin="12" binding="6" starts="sheet">
    <ground><rect x="-8" y="100" w="4" h="40" fill="25%"/></ground>
    <header>
      <columns widths="* 62" valign="bottom"><column><b>Plums, halved or whole</b> · raw pack · quart jar</column><column align="right">page <page/> of <pages/></column></columns>
      <rule line="1.5" around="0.8"/>
    </header>
    <footer>
      <rule line="0.75" around="0.8"/>
      <columns widths="* 2*"><column>Made-up figures, for layout only</column><column align="right">up to 1,000 ft</column></columns>
    </footer>
    <body>
      <columns widths="* 46" valign="bottom">
        <column><heading level="1" bookmark="Plums in quarts">Plums in quarts</heading><para size="11">Read each line, do it, tick it. The line in the margin is thick where <b>time must run</b>.</para></column>
        <column><panel tint="black" ink="white" pad="2.5" align="center"><para size="9" before="0" after="0">ALTITUDE UP TO</para><para size="26" b="yes" leading="1" before="0" after="0">1,000 ft</para></panel></column>
      </columns>
      <readings figure="34"><reading value="25" unit="min" caption="full rolling boil"/><reading value="1/2" unit="in" caption="headspace"/><reading value="1 1/2" unit="qt" caption="syrup for 7 jars"/><reading value="2" unit="in" caption="water over the lids"/></readings>
      <heading level="2">Before the fire is lit</heading>
      <steps box="7">
        <step>Look over each rim with a finger; a nicked jar does not seal. Set out <figure>7</figure> good ones.</step>
        <step>Stir <figure>1/2 tsp</figure> into each jar, and tick the jar:<marks count="7" size="8" shape="box"/></step>
        <step line="dashed">If you like it sweet: <frac>1 1/4</frac> cups sugar, stirred in <keep>3 quarts</keep> of water. <span size="10">Safe without.</span></step>
      </steps>
      <heading level="2">In the canner</heading>
      <steps box="7" numbered="yes" from="4">
        <step figure="25 min" also="1-1/2 in">Lid on, highest heat, until the whole surface rolls.</step>
        <step>Never lift it by one side.<caution brief="yes" word="Hot:">mind the steam</caution></step>
        <step line="thick">
          <panel line="1.5" pad="2.5" around="0" size="14"><para before="0"><sign name="clock"/> <figure scale="1.8">25 min</figure> by the clock, lid on</para>
          <fields gap="8" row-gap="3"><field caption="Started" w="32" h="9"/><field caption="Ends" w="32" h="9"/><field caption="Gauge" w="22" h="9" unit="psi"/></fields></panel>
          <caution word="Restart the clock" size="12">if the boil is lost for even a moment: back to a full boil, then the whole time again.</caution>
        </step>
        <step line="thick">Heat off, lid off, wait <figure>5 min</figure>.</step>
        <step line="none">Lift straight up, set on a towel, <frac>1 in</frac> apart. <box/> towel <box/> rack</step>
      </steps>
      <heading level="2">Headspace, true to scale</heading>
      <columns widths="60 *" gap="8">
        <column>
          <drawing w="60" h="40" alt="A jar's shoulder drawn to scale: the food stops half an inch below the rim." size="10">
            <rect x="6" y="2" w="40" h="38" line="1.5"/><rect x="4" y="0" w="44" h="3" fill="black"/>
            <rect x="7" y="15.7" w="38" h="24" hatch="1.6"/>
            <line x1="46" x2="58" y1="3" y2="3" line="1"/><line x1="46" x2="58" y1="15.7" y2="15.7" line="1"/>
            <line x1="55" x2="55" y1="3" y2="15.7" line="1.5"/><polygon points="55,3 54,5.4 56,5.4" fill="black"/><polygon points="55,15.7 54,13.3 56,13.3" fill="black"/>
            <text x="49" y="3" w="5" h="12.7" turn="90" size="10" align="center"><frac>1/2 in</frac></text>
          </drawing>
        </column>
        <column>
          <para>Hold the drawing against the jar: the food ends at the lower mark, the rim at the upper one. Write what was left over: <blank w="30"/></para>
          <fields size="11"><field caption="Jars not full" w="24" caption-at="below"/><field caption="Who" w="40" caption-at="below" boxed="yes"/></fields>
        </column>
      </columns>
      <rule line="2" dash="1.5" ink="accent"/>
      <heading level="3">Spoiled or doubtful</heading>
      <panel tint="8%" pad="3"><para>Leaking, bulging, spurting, off smell or mould: <b>never taste</b>.<br/>Ask your local extension service or health authority. <sign name="arrow"/> <sign name="tick"/> <sign name="cross"/> <sign name="drop"/></para></panel>
      <break to="side"/>
      <heading level="2">On the shelf</heading>
      <table columns="26 * 24 24 62" align-columns="left left left left left" size="11">
        <head tint="12%"><cell>Lot</cell><cell>What</cell><cell>Packed</cell><cell>Use by</cell><cell>Strike a ring per jar taken</cell></head>
        <#list 1..9 as i>
        <group>
          <row tint="5%" b="yes"><cell span="5">Cellar B${i}</cell></row>
          <#list 1..3 as j>
          <row><cell head="yes">26082${i}A-${j}</cell><cell>Plums, raw, quart</cell><cell>2026-08-2${i}</cell><cell>2027-08-2${i}</cell><cell><marks shape="ring" size="7" labels="01 02 03 04 05 06 07 08 09" struck="<#if j == 1>01 04</#if>"/></cell></row>
          </#list>
        </group>
        </#list>
        <row line="0"><cell span="4" align="right">in all</cell><cell b="yes">189</cell></row>
      </table>
      <space h="3"/>
      <group keep="no"><para keep="yes">A grid:</para>
      <table columns="* * *" grid="yes" pad="1.5" size="11"><row h="9"><cell valign="middle" align="center">a</cell><cell valign="bottom">b</cell><cell tint="15%">c</cell></row></table></group>
    </body>
  </section>
  <section turned="yes" columns="2" gap="10" margin="14">
    <body>
      <heading level="2" hyphenate="no">The day</heading>
      <drawing w="112" h="150" alt="Times of the day from eight to one: heating, boil, rest." size="9" align="left">
        <#list 8..13 as h><line x1="10" x2="112" y1="${4 + (h - 8) * 28}" y2="${4 + (h - 8) * 28}" line="0.5" dash="0.8"/><text x="8" y="${5 + (h - 8) * 28}" align="right" b="yes">${h}</text></#list>
        <rect x="14" y="10" w="26" h="30" hatch="1.8" line="1"/><rect x="16" y="20" w="22" h="9" fill="white"/><text x="16" y="20" w="22" h="9" size="11" min="7" align="center" valign="middle">heating</text>
        <rect x="14" y="40" w="26" h="34" fill="black"/><text x="14" y="40" w="26" h="34" ink="white" b="yes" size="18" min="8" align="center" valign="middle">boil 25 min</text>
        <circle cx="14" cy="40" r="3" fill="white" line="1.5"/><sign name="clock" x="11.9" y="37.9" size="4.2"/>
        <rect x="46" y="30" w="26" h="40" fill="15%" line="1" radius="2"/><text x="46" y="30" w="26" h="40" size="12" min="7" align="center" valign="middle">blanch and peel</text>
        <rect x="78" y="60" w="26" h="40" line="1.5" dash="1"/><text x="78" y="60" w="26" h="40" size="12" min="7" align="center" valign="middle" turn="-90">rest</text>
        <arc cx="60" cy="115" r="14" from="0" to="150" sector="yes" fill="accent"/><arc cx="60" cy="115" r="14" from="0" to="360" line="1"/>
        <polygon points="30,100 40,120 20,120" hatch="1.2" line="1"/><polygon points="84,110 90,116 96,108 102,120" closed="no" line="1.5"/>
        <picture x="80" y="128" w="20" h="12" alt="A jar upside down"><polygon points="2,10 18,10 15,1 5,1" line="1"/></picture>
        <text x="60" y="138" align="center" size="10">five twelfths of an hour</text>
      </drawing>
      <para hyphenate="yes" align="left">The second column of a turned side. Long paragraphs run over from column to column and from side to side, with at least two lines on each, and words are divided where the language's patterns allow, as in Chrysanthemum-blossomed tomatillos, applesauce, strawberries and cranberries.</para>
      <#list 1..6 as i><para keep="<#if i == 3>yes<#else>no</#if>">Paragraph ${i}. Washing, peeling, pitting, filling and wiping take as long as they take; only the boil is by the clock.</para></#list>
    </body>
  </section>
  <#macro label n long><label>
    <rect x="0" y="0" w="3.5" h="25.4" fill="black"/><text x="0.3" y="1" w="3" h="23" leading="1" turn="90" ink="white" b="yes" size="8" align="center" valign="middle">AUG 27</text>
    <text x="5.5" y="1.8" w="40" h="11" size="14" min="7" b="yes"><#if long>Chrysanthemum-blossomed tomatillos with strawberries<#else>Plums</#if></text>
    <text x="5.5" y="13" w="40" h="11" size="9.5" min="6.5" drop-below="7"><part b="yes">26082${n}A-K/0${n}</part><part>use by 2027-08-2${n}</part><part drop="1">packed 2026-08-2${n} · raw · quart</part><part drop="2">boiling water 25 min · 1,000 ft</part></text>
    <qr x="46.5" y="3.4" w="18.6" group="a" alt="LOT 26082${n}A-K/0${n}, use by 2027-08-2${n}"><try>LOT 26082${n}A-K/0${n} USE BY 2027-08-2${n} PLUMS RAW QUART BOILING WATER 25 MIN 420 M CITRIC ACID AND MORE WORDS THAN A CODE OF THIS SIZE HOLDS</try><try>LOT 26082${n}A-K/0${n} USE BY 2027-08-2${n} PLUMS RAW QUART BOILING WATER 25 MIN</try><try>LOT 26082${n}A-K/0${n} USE BY 2027-08-2${n}</try></qr>
  </label></#macro>
  <labels shape="rounded-rect" columns="3" rows="10" w="66.675" h="25.4" left="${left!4.7625}" top="12.7" pitch-x="69.85" pitch-y="25.4" start="3" cut="0.5" id="letter-30up">
    <#list 1..9 as n><@label n=n long=(n % 2 == 0)/></#list>
  </labels>
  <labels shape="circle" columns="3" rows="4" w="62.687" h="62.687" left="6.756" top="13.106" pitch-x="69.85" pitch-y="63.5" cut="0.75" right="0.5" down="-0.5" scale="1.002">
    <#list 1..5 as n><label>
      <circle cx="31.34" cy="31.34" r="29" line="1"/>
      <text x="13" y="7" w="36.7" h="11" size="15" min="8" b="yes" align="center" valign="bottom">Plums</text>
      <qr x="21" y="20" w="20.7" group="b" alt="LOT 26082${n}A-K/0${n}"><try>LOT 26082${n}A-K/0${n} USE BY 2027-08-2${n}</try></qr>
      <text x="11" y="42" w="40.7" h="12" size="10" min="7" align="center"><part b="yes">26082${n}A-K/0${n}</part><part>use by 2027-08-2${n}</part></text>
    </label></#list>
  </labels>
</sheet>
