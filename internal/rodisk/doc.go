// Package rodisk runs tests on a disk that can only be read, as a stick with its lock on. It promises a real one, in a
// process of its own that may mount it, and to say why where the system lets no test do that.
package rodisk
