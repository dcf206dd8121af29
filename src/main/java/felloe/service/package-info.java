/** One use case a class: a typed request in, a domain result out. No words, options or bytes. */
package felloe.service;
