/**
 * What mends a plate: changes of its shape file that are tried before they are told. How a changed
 * plate is read, reviewed and reckoned is handed in.
 */
package felloe.cure;
