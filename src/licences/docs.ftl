# What ships, and its licences

Facetwright carries these libraries of others, as the file of each says. Where several licences stand, the
library's own page tells which parts they cover, or that you may choose. The typefaces in it are under the
SIL Open Font License 1.1, whose text lies beside them. The same list is on the page *About* of the window.
It is written by `scripts/docs`; a test holds it to what the build takes along.

| library | version | licences | page of its makers |
|---|---|---|---|
<#list dependencyMap as e>
| ${e.key.artifactId} | ${e.key.version} | ${e.value?join(", ")} | ${e.key.url} |
</#list>
