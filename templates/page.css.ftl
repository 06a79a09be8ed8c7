<#-- Style of the record pages, put into each page so that it needs no other file. -->
:root { color-scheme: light dark; --ink: #14181b; --paper: #fffdf8; --quiet: #4a5257; --line: #9aa3a8; --mark: #0b4f6c; --stop: #9b1c1c; --stop-paper: #fdeceb }
@media (prefers-color-scheme: dark) { :root { --ink: #f2efe8; --paper: #16191b; --quiet: #b9c0c4; --line: #5d666b; --mark: #7cc4e4; --stop: #ffb4ab; --stop-paper: #3a1714 } }
* { box-sizing: border-box }
body { margin: 0 auto; max-width: 42rem; padding: 1rem 1rem 3rem; font: 1.0625rem/1.5 system-ui, sans-serif; color: var(--ink); background: var(--paper); overflow-wrap: anywhere }
h1 { font-size: 1.75rem; line-height: 1.15; margin: .25rem 0 0 }
h2 { font-size: 1.125rem; margin: 2rem 0 .5rem; border-bottom: 2px solid var(--ink); padding-bottom: .2rem }
p { margin: .5rem 0 }
a { color: var(--mark) }
.sub { color: var(--quiet); margin: 0 }
.verdict { border: 3px solid var(--ink); border-left-width: 14px; padding: .75rem 1rem; margin: 1rem 0; font-size: 1.375rem; line-height: 1.25; font-weight: 700 }
.verdict small { display: block; font-size: 1.0625rem; font-weight: 400; margin-top: .25rem }
.verdict.stop { border-color: var(--stop); background: var(--stop-paper); color: var(--stop) }
dl { display: grid; grid-template-columns: minmax(7rem, 1fr) 2fr; gap: .35rem 1rem; margin: 0 }
dt { color: var(--quiet) }
dd { margin: 0; font-weight: 600 }
table { border-collapse: collapse; width: 100% }
th, td { text-align: left; padding: .5rem .5rem .5rem 0; border-bottom: 1px solid var(--line); vertical-align: top }
th { color: var(--quiet); font-weight: 400 }
ul.jars { list-style: none; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(9.5rem, 1fr)); gap: .5rem }
ul.jars li { border: 1px solid var(--line); padding: .5rem .625rem }
ul.jars li:target { border: 3px solid var(--mark) }
ul.jars b { display: block; font-size: 1.125rem }
.caution { border-left: 8px solid var(--stop); padding: .25rem 0 .25rem .75rem; margin: 1rem 0 }
@media print { body { max-width: none; font-size: 11pt; padding: 0 } a { color: inherit; text-decoration: none } }
