/**
 * What is being worked on, without any view of it: the script and its file, dial settings, the last
 * good design, what is wrong, what is selected.
 */
package facetwright.workbench.desk;
