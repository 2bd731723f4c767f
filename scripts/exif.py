#!/usr/bin/python3
"""Prints how Pillow turns pictures by Exif's orientation, for export/photo's tests (Debian: python3-pil).

A stored picture of 3 x 2 pixels, numbered row by row from 1, under each of the eight
values; ImageOps.exif_transpose gives the picture as it is looked at, row by row.
"""
import io
import PIL
from PIL import Image, ImageOps

print("Pillow", PIL.__version__)
for way in range(1, 9):
    img = Image.new("L", (3, 2))
    img.putdata([1, 2, 3, 4, 5, 6])
    exif = Image.Exif()
    exif[0x0112] = way
    out = io.BytesIO()
    img.save(out, "PNG", exif=exif)
    turned = ImageOps.exif_transpose(Image.open(io.BytesIO(out.getvalue())))
    rows = [[turned.getpixel((x, y)) for x in range(turned.width)] for y in range(turned.height)]
    print("\t%d: {%s}," % (way, ", ".join("{%s}" % ", ".join(map(str, r)) for r in rows)))
