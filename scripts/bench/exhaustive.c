/*
 * The obvious way, as a baseline to be measured against: for every count from 2 to 1000, try every
 * circle, every move and every train in turn, and stop at the first that closes. No proof, no
 * ranking, no second answer. 40:1, circles 15-49, twelve change gears, up to 12 teeth per move,
 * the plate turning at most 6 times for one turn of the spindle.
 *
 * Prints how many counts close and the milliseconds it took.
 */
#define _POSIX_C_SOURCE 199309L
#include <stdio.h>
#include <time.h>

static const int circles[] = {15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49};
static const int gears[] = {24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100};
enum { nCircles = sizeof circles / sizeof *circles, nGears = sizeof gears / sizeof *gears, worm = 40, mostTeeth = 12, greatest = 6 };

static long gcd(long a, long b) { while (b) { long r = a % b; a = b; b = r; } return a; }

/* Is p/q one pair, or two pairs, of the gears? */
static int isTrain(long p, long q) {
  for (int a = 0; a < nGears; a++)
    for (int b = 0; b < nGears; b++)
      if (a != b && gears[a] * q == gears[b] * p) return 1;
  for (int a = 0; a < nGears; a++)
    for (int c = a + 1; c < nGears; c++)
      for (int b = 0; b < nGears; b++) {
        if (b == a || b == c) continue;
        for (int d = b + 1; d < nGears; d++)
          if (d != a && d != c && (long)gears[a] * gears[c] * q == (long)gears[b] * gears[d] * p) return 1;
      }
  return 0;
}

static int closes(long count) {
  for (int i = 0; i < nCircles; i++)
    if (worm * circles[i] % count == 0) return 1;
  for (long k = 1; k <= mostTeeth && k < count; k++) {
    if (gcd(k, count) != 1) continue;
    for (int i = 0; i < nCircles; i++) {
      long whole = circles[i] * k;
      for (long h = 1; h * count <= (worm + greatest) * whole; h++) {
        long p = worm * whole - count * h;
        if (p == 0 || p > greatest * whole || -p > greatest * whole) continue;
        long size = p < 0 ? -p : p, common = gcd(size, whole);
        if (isTrain(size / common, whole / common)) return 1;
      }
    }
  }
  return 0;
}

int main(void) {
  struct timespec start, end;
  int found = 0;
  clock_gettime(CLOCK_MONOTONIC, &start);
  for (long count = 2; count <= 1000; count++) found += closes(count);
  clock_gettime(CLOCK_MONOTONIC, &end);
  printf("%d %.3f\n", found, (end.tv_sec - start.tv_sec) * 1e3 + (end.tv_nsec - start.tv_nsec) / 1e6);
  return 0;
}
