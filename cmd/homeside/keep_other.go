//go:build !linux

package main

func keepFreed() {}
