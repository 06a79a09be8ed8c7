<#-- Style of the record pages, put into each page so that it needs no other file. -->
:root { color-scheme: light dark; --ink: #14181b; --paper: #fffdf8; --quiet: #4a5257; --line: #8b949a; --link: #0b4f6c; --stop: #8f1414; --stop-paper: #fdeceb; --cold: #0b4f6c; --cold-paper: #e6f2f7; --first: #6b4400; --first-paper: #fdf3dc; --good: #1d5b2a; --good-paper: #eaf6ec }
@media screen and (prefers-color-scheme: dark) { :root { --ink: #f2efe8; --paper: #16191b; --quiet: #bcc3c7; --line: #747d83; --link: #8fd0ef; --stop: #ffb4ab; --stop-paper: #3d1512; --cold: #a5d8ef; --cold-paper: #12303d; --first: #ffd58a; --first-paper: #37280c; --good: #a9dfb3; --good-paper: #14301b } }
* { box-sizing: border-box }
[hidden] { display: none !important }
body { margin: 0 auto; max-width: 42rem; padding: .75rem 1rem 3rem; font: 1.0625rem/1.45 system-ui, sans-serif; color: var(--ink); background: var(--paper); overflow-wrap: anywhere }
h1 { font-size: 1.75rem; line-height: 1.15; margin: .5rem 0 0 }
h2 { font-size: 1.1875rem; margin: 1.75rem 0 .5rem; border-bottom: 2px solid var(--ink); padding-bottom: .2rem }
h3 { font-size: 1.0625rem; margin: 1.25rem 0 .25rem }
p { margin: .25rem 0 }
a { color: var(--link); text-underline-offset: .15em }
:focus-visible { outline: 3px solid var(--link); outline-offset: 2px }
nav a { display: inline-block; padding: .5rem .5rem .5rem 0; margin-right: .25rem }
.sub { color: var(--quiet); font-weight: 400 }
.code { font: 700 1.125rem/1.4 ui-monospace, monospace; margin-top: .25rem }
.says { --tone: var(--ink); --ground: transparent; border: 3px solid var(--tone); border-left-width: 14px; background: var(--ground); color: var(--tone); padding: .625rem .875rem; margin: .75rem 0; break-inside: avoid }
.says .words { font-size: 1.625rem; line-height: 1.15; font-weight: 700; margin: 0 }
.mark { --tone: var(--ink); color: var(--tone); font-weight: 700; border-left: 8px solid var(--tone); padding-left: .5rem }
.stop { --tone: var(--stop) !important; --ground: var(--stop-paper) !important }
.cold { --tone: var(--cold) !important; --ground: var(--cold-paper) !important }
.first, .look { --tone: var(--first) !important; --ground: var(--first-paper) !important }
.good { --tone: var(--good) !important; --ground: var(--good-paper) !important }
dl { margin: 0 }
dl div { display: grid; grid-template-columns: minmax(7rem, 1fr) 2fr; gap: .25rem 1rem; padding: .2rem 0 }
dt { color: var(--quiet) }
dd { margin: 0; font-weight: 600 }
ul { padding-left: 1.25rem }
li { margin: .35rem 0 }
ul.rows, ul.jars { list-style: none; padding: 0; margin: 0 }
.row { border-bottom: 1px solid var(--line); padding: .5rem 0; margin: 0; break-inside: avoid }
.what a { font-weight: 700; font-size: 1.125rem; display: inline-block; padding: .2rem 0 }
ul.jars { display: flex; flex-wrap: wrap; gap: .375rem; margin: .375rem 0 0 }
ul.jars li { margin: 0; min-width: 2.5rem; line-height: 2.25rem; text-align: center; border: 1px solid currentColor; font-weight: 700 }
ul.jars a { display: block; padding: 0 .375rem; color: inherit }
ul.jars li:target { outline: 3px solid var(--link) }
ol.history { padding-left: 3rem }
.search label, label { display: block; font-weight: 600; margin-top: .5rem }
input { font: inherit; width: 100%; min-height: 2.75rem; padding: .375rem .625rem; border: 2px solid var(--line); background: var(--paper); color: var(--ink); border-radius: 0 }
input[type=radio], input[type=checkbox] { width: 1.5rem; height: 1.5rem; min-height: 0; padding: 0; flex: none; accent-color: var(--link) }
fieldset { border: 2px solid var(--line); margin: .625rem 0; padding: 0 .75rem .25rem; min-width: 0 }
legend { font-weight: 600; padding: .25rem .25rem 0 }
.sign label { display: flex; align-items: center; gap: .625rem; min-height: 2.75rem; margin: 0; font-weight: 400 }
.yesno label { display: inline-flex; margin-right: 2rem }
button { font: inherit; font-weight: 700; min-height: 2.75rem; padding: .375rem 1rem; margin: .625rem 0 .25rem; border: 2px solid var(--ink); background: var(--ink); color: var(--paper); border-radius: 0; cursor: pointer }
details { border: 2px solid var(--line); margin: .5rem 0; padding: 0 .75rem }
summary { font-weight: 700; padding: .625rem 0; cursor: pointer }
details[open] { padding-bottom: .5rem }
.caution { border-left: 8px solid var(--stop); padding: .25rem 0 .25rem .75rem; margin: 1.5rem 0 .75rem }
@media print { :root { color-scheme: light } body { max-width: none; font-size: 10.5pt; padding: 0 } nav, .search, .act { display: none } a { color: inherit; text-decoration: none } h2, h3 { break-after: avoid } h2 { margin-top: 1rem } dl div { padding: .1rem 0 } }
