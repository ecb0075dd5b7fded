/**
 * Notices: what the program has to say or to ask, as calm panels in the window rather than dialogs
 * over it. They wait in a row; the first one shows.
 */
package facetwright.workbench.notice;
