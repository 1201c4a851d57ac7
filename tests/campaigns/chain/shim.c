/* Stands between a process and the disk, for files in one folder: writes what is written and synced
   into a log, in order, or lets the n-th call of a kind fail. Loaded with LD_PRELOAD; silent until
   shim_log or shim_arm is called. For tests on Linux; a process that packs bags never needs it. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static char folder[4096];
static int log_to = -1;
static long fail_at, calls_of[3];          /* 0 write, 1 sync, 2 open */
static int fail_kind = -1, persistent, error_number;
static pthread_mutex_t turn = PTHREAD_MUTEX_INITIALIZER;

#define REAL(result, name, ...) \
  static result (*real)(__VA_ARGS__); if (!real) real = (result (*)(__VA_ARGS__))dlsym(RTLD_NEXT, name)

void shim_log(const char *where, const char *log) {
  snprintf(folder, sizeof folder, "%s/", where);
  log_to = open(log, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
}

void shim_arm(const char *where, long at, int kind, int for_ever, int error) {
  snprintf(folder, sizeof folder, "%s/", where);
  fail_at = at; fail_kind = kind; persistent = for_ever; error_number = error;
  calls_of[0] = calls_of[1] = calls_of[2] = 0;
}

long shim_calls(int kind) { return calls_of[kind]; }

/* Name below the folder of an open file, or NULL. */
static const char *name_of(int fd, char *path, size_t size) {
  char link[64];
  if (!folder[0] || fd == log_to) return NULL;
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, size - 1);
  if (length <= 0) return NULL;
  path[length] = 0;
  size_t head = strlen(folder);
  return strncmp(path, folder, head) ? NULL : path + head;
}

static int fails(int kind) {
  long now = ++calls_of[kind];
  if (kind != fail_kind || !fail_at) return 0;
  if (now == fail_at || (persistent && now > fail_at)) { errno = error_number; return 1; }
  return 0;
}

/* One line: what, name, offset, length; then the bytes. */
static void told(char what, const char *name, long long offset, const void *bytes, size_t length) {
  if (log_to < 0) return;
  char head[4400];
  int size = snprintf(head, sizeof head, "%c %s %lld %zu\n", what, name, offset, length);
  static ssize_t (*real)(int, const void *, size_t);
  if (!real) real = (ssize_t (*)(int, const void *, size_t))dlsym(RTLD_NEXT, "write");
  pthread_mutex_lock(&turn);
  real(log_to, head, size);
  if (length) real(log_to, bytes, length);
  pthread_mutex_unlock(&turn);
}

static ssize_t put(int fd, const void *bytes, size_t length, off64_t offset) {
  static ssize_t (*real)(int, const void *, size_t, off64_t);
  if (!real) real = (ssize_t (*)(int, const void *, size_t, off64_t))dlsym(RTLD_NEXT, "pwrite64");
  char path[4096];
  const char *name = name_of(fd, path, sizeof path);
  if (name && fails(0)) return -1;
  ssize_t done = real(fd, bytes, length, offset);
  if (name && done > 0) told('W', name, offset, bytes, done);
  return done;
}

ssize_t pwrite(int fd, const void *b, size_t n, off_t o) { return put(fd, b, n, o); }
ssize_t pwrite64(int fd, const void *b, size_t n, off64_t o) { return put(fd, b, n, o); }

ssize_t write(int fd, const void *bytes, size_t length) {
  REAL(ssize_t, "write", int, const void *, size_t);
  char path[4096];
  const char *name = name_of(fd, path, sizeof path);
  if (!name) return real(fd, bytes, length);
  if (fails(0)) return -1;
  ssize_t done = real(fd, bytes, length);
  off_t end = lseek(fd, 0, SEEK_CUR);
  if (done > 0) told('W', name, end - done, bytes, done);
  return done;
}

static int sync_of(int fd, const char *call) {
  int (*real)(int) = (int (*)(int))dlsym(RTLD_NEXT, call);
  char path[4096];
  const char *name = name_of(fd, path, sizeof path);
  if (name && fails(1)) return -1;
  int done = real(fd);
  if (name && !done) told('S', name, 0, NULL, 0);
  return done;
}

int fsync(int fd) { return sync_of(fd, "fsync"); }
int fdatasync(int fd) { return sync_of(fd, "fdatasync"); }

static int cut(int fd, off64_t length, const char *call) {
  int (*real)(int, off64_t) = (int (*)(int, off64_t))dlsym(RTLD_NEXT, call);
  char path[4096];
  const char *name = name_of(fd, path, sizeof path);
  int done = real(fd, length);
  if (name && !done) told('T', name, length, NULL, 0);
  return done;
}

int ftruncate(int fd, off_t length) { return cut(fd, length, "ftruncate64"); }
int ftruncate64(int fd, off64_t length) { return cut(fd, length, "ftruncate64"); }

static const char *below(const char *path) {
  size_t head = strlen(folder);
  return folder[0] && !strncmp(path, folder, head) ? path + head : NULL;
}

int unlink(const char *path) {
  REAL(int, "unlink", const char *);
  int done = real(path);
  if (!done && below(path)) told('U', below(path), 0, NULL, 0);
  return done;
}

int rename(const char *from, const char *to) {
  REAL(int, "rename", const char *, const char *);
  int done = real(from, to);
  if (!done && below(from) && below(to)) told('R', below(from), 0, below(to), strlen(below(to)));
  return done;
}

static int opened(const char *path, int flags, mode_t mode, const char *call) {
  int (*real)(const char *, int, ...) = (int (*)(const char *, int, ...))dlsym(RTLD_NEXT, call);
  if (below(path) && fails(2)) return -1;
  return real(path, flags, mode);
}

int open(const char *path, int flags, ...) {
  va_list rest; va_start(rest, flags); mode_t mode = va_arg(rest, int); va_end(rest);
  return opened(path, flags, mode, "open");
}
int open64(const char *path, int flags, ...) {
  va_list rest; va_start(rest, flags); mode_t mode = va_arg(rest, int); va_end(rest);
  return opened(path, flags, mode, "open64");
}
