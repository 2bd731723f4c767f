// Package homography maps the ground of a court to a picture of it and back,
// from points that are known in both. It promises the normalised direct linear
// transformation of Hartley and Zisserman (Multiple View Geometry, 2nd ed. 2004,
// alg. 4.2), how far each point is from fitting, and a reason where points say
// nothing: no NaN gets out.
package homography
