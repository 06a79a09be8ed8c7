<sheet size="12">
  <section margin="14">
    <header><columns widths="* 40"><column>Plums · raw · quart</column><column align="right">page <page/> of <pages/></column></columns><rule line="1"/></header>
    <footer>AIB 539 p. 2-3</footer>
    <body>
      <heading level="1">${title}</heading>
      <readings figure="30"><reading value="25" unit="min" caption="full rolling boil"/><reading value="1/2" unit="in" caption="headspace"/><reading value="1 1/2" unit="qt" caption="water"/></readings>
      <heading level="2">Before the fire is lit</heading>
      <steps box="7">
        <step>Wash <figure>7 quarts</figure> and look each rim over for nicks. A nick is no seal.</step>
        <step line="thick">Boil for <figure>25 min</figure>, lid on. Start <blank w="25"/> end <blank w="25"/></step>
        <step>Add <figure>1/2 tsp</figure> citric acid to each jar.<marks count="7"/></step>
      </steps>
      <caution word="Restart the clock">If the boil is lost: back to the boil and the whole time again.</caution>
      <table columns="30 * 20" align-columns="left left right"><head><cell>Lot</cell><cell>Product</cell><cell>Jars</cell></head>
      <#list 1..60 as i><row><cell>260824A-${i}</cell><cell>Plums</cell><cell>${i}</cell></row></#list></table>
    </body>
  </section>
</sheet>
