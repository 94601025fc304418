# SPDX-License-Identifier: GPL-3.0-or-later
"""The screen as a PNG file, read where Xvfb keeps it."""

import struct
import zlib


def save_screen(framebuffer, file):
    """`framebuffer` is an X window dump of 32 bits a pixel, as Xvfb writes with -fbdir."""
    with open(framebuffer, "rb") as dump:
        data = dump.read()
    header = struct.unpack(">25I", data[:100])
    size, width, height, line, colours = header[0], header[4], header[5], header[12], header[19]
    pixels = data[size + 12 * colours:]
    rows = (pixels[y * line:y * line + 4 * width] for y in range(height))
    with open(file, "wb") as png:
        png.write(b"\x89PNG\r\n\x1a\n")
        _chunk(png, b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0))
        _chunk(png, b"IDAT", zlib.compress(b"".join(b"\0" + _rgb(row) for row in rows), 6))
        _chunk(png, b"IEND", b"")


def _rgb(row):
    """Blue, green, red, nothing -> red, green, blue."""
    rgb = bytearray(len(row) // 4 * 3)
    rgb[0::3], rgb[1::3], rgb[2::3] = row[2::4], row[1::4], row[0::4]
    return bytes(rgb)


def _chunk(png, kind, content):
    png.write(struct.pack(">I", len(content)) + kind + content + struct.pack(">I", zlib.crc32(kind + content)))
