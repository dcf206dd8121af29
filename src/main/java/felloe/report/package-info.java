/** Domain results as reports: the one place where an answer becomes language. */
package felloe.report;
