package clip

import (
	"bytes"
	"fmt"
	"os"
	"strconv"
	"time"
)

// tick is the unit of times in /proc/PID/stat: USER_HZ is 100 on all common
// machines (Linux, proc_pid_stat(5)). Only whether they grow counts here.
const tick = 10 * time.Millisecond

// computed is the time that a process has computed; 0 if that is unknown.
func computed(pid int) time.Duration {
	stat, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
	if err != nil {
		return 0
	}
	const user, system = 11, 12 // of the fields after the name, which may hold anything
	fields := bytes.Fields(stat[bytes.LastIndexByte(stat, ')')+1:])
	sum := 0
	for i := user; i <= system && i < len(fields); i++ {
		n, err := strconv.Atoi(string(fields[i]))
		if err != nil {
			return 0
		}
		sum += n
	}
	return time.Duration(sum) * tick
}
