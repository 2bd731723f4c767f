// Package photo reads pictures of courts, JPEG and PNG, the way up that they are
// looked at, and draws scenes over them. It promises bounds on what it reads
// before it reads it, and a reason where it does not.
package photo
