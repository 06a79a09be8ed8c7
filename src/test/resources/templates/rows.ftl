<sheet size="9"><section><header>Shelf</header><footer>page <page/> of <pages/></footer><body><heading>Shelf</heading>
<table columns="30 * 25 25 30" pad="0.8"><head><cell>Lot</cell><cell>Product</cell><cell>Packed</cell><cell>Use by</cell><cell>Place</cell></head>
<#list 1..n as i><#if i%3==1><group></#if><row><cell>260824A-${i}</cell><cell>Plums, halved or whole, raw pack</cell><cell>2026-08-24</cell><cell>2027-08-24</cell><cell>cellar B${i % 7}</cell></row><#if i%3==0 || i == n></group></#if></#list></table></body></section></sheet>
