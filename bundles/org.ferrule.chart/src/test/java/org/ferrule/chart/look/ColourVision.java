/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import org.ferrule.picture.Ink;

/**
 * How a colour looks to different eyes. Dichromats: one plane of colours each for protanopia and deuteranopia
 * (Viénot, Brettel, Mollon, Color Res. Appl. 1999;24:243, coefficients from memory) and two half-planes for tritanopia
 * (Brettel, Viénot, Mollon, J. Opt. Soc. Am. A 1997;14:2647, coefficients for sRGB primaries from memory). Greyscale:
 * relative luminance of IEC 61966-2-1.
 */
enum ColourVision {
    USUAL {
        @Override
        double[] see(double[] rgb) {
            return rgb;
        }
    },
    PROTANOPIA {
        @Override
        double[] see(double[] rgb) {
            double[] lms = times(LMS, rgb);
            return times(RGB, new double[] { 2.02344 * lms[1] - 2.52581 * lms[2], lms[1], lms[2] });
        }
    },
    DEUTERANOPIA {
        @Override
        double[] see(double[] rgb) {
            double[] lms = times(LMS, rgb);
            return times(RGB, new double[] { lms[0], 0.494207 * lms[0] + 1.24827 * lms[2], lms[2] });
        }
    },
    TRITANOPIA {
        @Override
        double[] see(double[] rgb) {
            boolean first = 0.03901 * rgb[0] - 0.02788 * rgb[1] - 0.01113 * rgb[2] >= 0;
            return times(first ? TRITAN_FIRST : TRITAN_SECOND, rgb);
        }
    },
    GREYSCALE {
        @Override
        double[] see(double[] rgb) {
            double grey = luminance(rgb);
            return new double[] { grey, grey, grey };
        }
    };

    private static final double[][] LMS = { { 17.8824, 43.5161, 4.11935 }, { 3.45565, 27.1554, 3.86714 },
        { 0.0299566, 0.184309, 1.46709 } };
    private static final double[][] RGB = { { 0.0809444479, -0.130504409, 0.116721066 },
        { -0.0102485335, 0.0540193266, -0.113614708 }, { -0.000365296938, -0.00412161469, 0.693511405 } };
    private static final double[][] TRITAN_FIRST = { { 1.01277, 0.13548, -0.14826 }, { -0.01243, 0.86812, 0.14431 },
        { 0.07589, 0.80500, 0.11911 } };
    private static final double[][] TRITAN_SECOND = { { 0.93678, 0.18979, -0.12657 }, { 0.06154, 0.81526, 0.12320 },
        { -0.37562, 1.12767, 0.24796 } };

    /** What linear sRGB (0 to 1) looks like to these eyes. */
    abstract double[] see(double[] linearRgb);

    /** CIE Lab (D65) of what an ink looks like to these eyes. */
    Lab lab(Ink ink) {
        double[] seen = see(linear(ink));
        for (int i = 0; i < seen.length; i++) {
            seen[i] = Math.max(0, Math.min(1, seen[i]));
        }
        return Lab.ofLinearRgb(seen);
    }

    static double[] linear(Ink ink) {
        return new double[] { linear(ink.red()), linear(ink.green()), linear(ink.blue()) };
    }

    static double luminance(double[] linearRgb) {
        return 0.2126 * linearRgb[0] + 0.7152 * linearRgb[1] + 0.0722 * linearRgb[2];
    }

    private static double linear(int channel) {
        double v = channel / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    private static double[] times(double[][] matrix, double[] v) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            product[i] = matrix[i][0] * v[0] + matrix[i][1] * v[1] + matrix[i][2] * v[2];
        }
        return product;
    }
}
