/*
 * baseline LIST FONT... writes the frames of a display list to standard output,
 * four bytes a pixel (bgr0), to be packed by ffmpeg: what an engineer would do
 * who draws clips with cairo. Nothing is computed here but pixels: the list has
 * every shape and every glyph in its place. What stands still is drawn once and
 * copied under every frame.
 *
 * The list is made by cmd/clipbench, whose listing.go describes it.
 */
#define _GNU_SOURCE
#include <cairo-ft.h>
#include <fcntl.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static const uint8_t *at, *end; /* in the list */
static cairo_font_face_t *fonts[8];

static void fail(const char *what)
{
	fprintf(stderr, "baseline: %s\n", what);
	exit(1);
}

static void take(void *to, size_t n)
{
	if ((size_t)(end - at) < n)
		fail("the list is cut off");
	memcpy(to, at, n);
	at += n;
}

static uint8_t byte(void)
{
	uint8_t v;
	take(&v, sizeof v);
	return v;
}

static uint32_t number(void)
{
	uint32_t v;
	take(&v, sizeof v);
	return v;
}

static double real(void)
{
	float v;
	take(&v, sizeof v);
	return v;
}

static double colour(cairo_t *c) /* takes a colour and gives its alpha */
{
	uint8_t v[4];
	take(v, sizeof v);
	cairo_set_source_rgba(c, v[0] / 255.0, v[1] / 255.0, v[2] / 255.0, v[3] / 255.0);
	return v[3];
}

static void outline(cairo_t *c)
{
	uint32_t n = number();
	double p[6];
	cairo_new_path(c);
	while (n-- > 0) {
		uint8_t op = byte();
		int reals = op == 'C' ? 6 : op == 'Z' ? 0 : 2;
		for (int i = 0; i < reals; i++)
			p[i] = real();
		switch (op) {
		case 'M': cairo_move_to(c, p[0], p[1]); break;
		case 'L': cairo_line_to(c, p[0], p[1]); break;
		case 'C': cairo_curve_to(c, p[0], p[1], p[2], p[3], p[4], p[5]); break;
		case 'Z': cairo_close_path(c); break;
		default: fail("unknown step");
		}
	}
}

static void path(cairo_t *c)
{
	outline(c);
	if (colour(c) > 0)
		cairo_fill_preserve(c);
	double alpha = colour(c), width = real(), dash[16];
	uint8_t round = byte(), dashes = byte();
	if (dashes > 16)
		fail("too many dashes");
	for (int i = 0; i < dashes; i++)
		dash[i] = real();
	if (alpha == 0 || width == 0)
		return;
	cairo_set_line_width(c, width);
	cairo_set_dash(c, dash, dashes, 0);
	cairo_set_line_cap(c, round ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
	cairo_set_line_join(c, round ? CAIRO_LINE_JOIN_ROUND : CAIRO_LINE_JOIN_BEVEL);
	cairo_stroke(c);
}

static void text(cairo_t *c)
{
	static cairo_glyph_t glyphs[1024];
	uint8_t font = byte();
	double size = real();
	colour(c);
	uint32_t n = number();
	if (font >= 8 || !fonts[font] || n > 1024)
		fail("no such font, or too long a line");
	for (uint32_t i = 0; i < n; i++) {
		glyphs[i].index = number();
		glyphs[i].x = real();
		glyphs[i].y = real();
	}
	cairo_set_font_face(c, fonts[font]);
	cairo_set_font_size(c, size);
	cairo_show_glyphs(c, glyphs, n);
}

static void frame(cairo_t *c)
{
	for (;;)
		switch (byte()) {
		case 'P': path(c); break;
		case 'T': text(c); break;
		case 'F': return;
		default: fail("unknown shape");
		}
}

static void read_list(const char *name)
{
	FILE *f = fopen(name, "rb");
	if (!f || fseek(f, 0, SEEK_END) != 0)
		fail("cannot read the list");
	long size = ftell(f);
	uint8_t *list = malloc(size);
	rewind(f);
	if (!list || fread(list, 1, size, f) != (size_t)size)
		fail("cannot read the list");
	fclose(f);
	at = list, end = list + size;
}

static cairo_t *context(int width, int height)
{
	cairo_t *c = cairo_create(cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height));
	cairo_font_options_t *o = cairo_font_options_create();
	cairo_font_options_set_hint_style(o, CAIRO_HINT_STYLE_NONE);
	cairo_font_options_set_hint_metrics(o, CAIRO_HINT_METRICS_OFF);
	cairo_font_options_set_antialias(o, CAIRO_ANTIALIAS_GRAY);
	cairo_set_font_options(c, o);
	cairo_set_fill_rule(c, CAIRO_FILL_RULE_WINDING);
	return c;
}

int main(int argc, char **argv)
{
	FT_Library library;
	if (argc < 3 || argc > 10 || FT_Init_FreeType(&library) != 0)
		fail("want a list and up to 8 fonts");
	for (int i = 2; i < argc; i++) {
		FT_Face face;
		if (FT_New_Face(library, argv[i], 0, &face) != 0)
			fail("cannot read a font");
		fonts[i - 2] = cairo_ft_font_face_create_for_ft_face(face, FT_LOAD_NO_HINTING);
	}
	read_list(argv[1]);
	int width = number(), height = number(), frames = number();
	cairo_t *still = context(width, height), *moving = context(width, height);
	colour(still);
	cairo_paint(still);
	frame(still);
	cairo_surface_flush(cairo_get_target(still));
	const uint8_t *ground = cairo_image_surface_get_data(cairo_get_target(still));
	uint8_t *picture = cairo_image_surface_get_data(cairo_get_target(moving));
	size_t size = (size_t)cairo_image_surface_get_stride(cairo_get_target(still)) * height;
	fcntl(STDOUT_FILENO, F_SETPIPE_SZ, 1 << 20); /* fewer changes between the two programs */
	for (int i = 0; i < frames; i++) {
		cairo_surface_flush(cairo_get_target(moving));
		memcpy(picture, ground, size);
		cairo_surface_mark_dirty(cairo_get_target(moving));
		frame(moving);
		cairo_surface_flush(cairo_get_target(moving));
		for (size_t done = 0; done < size;) {
			ssize_t n = write(STDOUT_FILENO, picture + done, size - done);
			if (n < 0)
				return 1; /* the reader is gone */
			done += n;
		}
	}
	return 0;
}
