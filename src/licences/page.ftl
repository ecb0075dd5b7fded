<#list dependencyMap as e>
${e.key.artifactId}	${e.key.version}	${e.value?join(", ")}
</#list>
