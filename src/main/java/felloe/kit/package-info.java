/** Which files each answer yields, what they are called, and which of them belong together. */
package felloe.kit;
