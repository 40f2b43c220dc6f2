/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/** A complex number; a place in the section, or a factor. */
record Complex(double re, double im) {

    Complex minus(Complex other) {
        return new Complex(re - other.re, im - other.im);
    }

    Complex plus(Complex other) {
        return new Complex(re + other.re, im + other.im);
    }

    Complex times(double factor) {
        return new Complex(re * factor, im * factor);
    }

    Complex times(Complex other) {
        return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
    }

    Complex over(Complex other) {
        return times(other.conjugate()).times(1 / other.square());
    }

    Complex conjugate() {
        return new Complex(re, -im);
    }

    double square() {
        return re * re + im * im;
    }

    double size() {
        return Math.hypot(re, im);
    }
}
