/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

/** A colour in CIE Lab under D65, with the CIEDE2000 difference (Sharma, Wu, Dalal, Color Res. Appl. 2005;30:21). */
record Lab(double l, double a, double b) {

    static Lab ofLinearRgb(double[] c) {
        double x = f((0.4124 * c[0] + 0.3576 * c[1] + 0.1805 * c[2]) / 0.9505);
        double y = f(0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2]);
        double z = f((0.0193 * c[0] + 0.1192 * c[1] + 0.9505 * c[2]) / 1.089);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    private static double f(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    /** CIEDE2000 with all weights 1. */
    double difference(Lab o) {
        double meanChroma = (Math.hypot(a, b) + Math.hypot(o.a, o.b)) / 2;
        double g = 1.5 - 0.5 * Math.sqrt(seventh(meanChroma));
        double c1 = Math.hypot(g * a, b);
        double c2 = Math.hypot(g * o.a, o.b);
        double h1 = hue(g * a, b);
        double h2 = hue(g * o.a, o.b);
        double turn = c1 * c2 == 0 ? 0 : Math.IEEEremainder(h2 - h1, 360);
        double dL = o.l - l;
        double dC = c2 - c1;
        double dH = 2 * Math.sqrt(c1 * c2) * sin(turn / 2);
        double meanL = (l + o.l) / 2;
        double meanC = (c1 + c2) / 2;
        double meanH = meanHue(h1, h2, c1 * c2 == 0);
        double t = 1 - 0.17 * cos(meanH - 30) + 0.24 * cos(2 * meanH) + 0.32 * cos(3 * meanH + 6)
                - 0.20 * cos(4 * meanH - 63);
        double rotation = -2 * Math.sqrt(seventh(meanC)) * sin(60 * Math.exp(-Math.pow((meanH - 275) / 25, 2)));
        double l50 = (meanL - 50) * (meanL - 50);
        double l2 = dL / (1 + 0.015 * l50 / Math.sqrt(20 + l50));
        double cc = dC / (1 + 0.045 * meanC);
        double hh = dH / (1 + 0.015 * meanC * t);
        return Math.sqrt(l2 * l2 + cc * cc + hh * hh + rotation * cc * hh);
    }

    private static double seventh(double c) {
        double p = Math.pow(c, 7);
        return p / (p + Math.pow(25, 7));
    }

    private static double hue(double a, double b) {
        return a == 0 && b == 0 ? 0 : (Math.toDegrees(Math.atan2(b, a)) + 360) % 360;
    }

    private static double meanHue(double h1, double h2, boolean grey) {
        if (grey) {
            return h1 + h2;
        }
        if (Math.abs(h1 - h2) <= 180) {
            return (h1 + h2) / 2;
        }
        return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
