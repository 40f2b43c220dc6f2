/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.picture.Fill;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;

/**
 * The colours of a look in one scheme.
 *
 * @param ground the area behind
 * @param ink what is written and drawn on it
 * @param hatch lines or dots over the ground; absent when it is even
 */
public record Tone(Ink ground, Ink ink, Optional<Hatch> hatch) {

    public Tone {
        Objects.requireNonNull(ground, "ground");
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(hatch, "hatch");
    }

    /** An even tone; its inks bear the role's name with {@code .ground} and {@code .ink}. */
    static Tone even(String role, int groundRgb, int inkRgb) {
        return new Tone(Ink.of(role + ".ground", groundRgb), Ink.of(role + ".ink", inkRgb), Optional.empty());
    }

    /** This tone with a hatch; its ink bears the ground's role with {@code .hatch}. */
    Tone hatched(Hatch.Pattern pattern, int rgb) {
        return new Tone(ground, ink, Optional.of(Hatch.of(pattern, Ink.of(ground.role() + ".hatch", rgb))));
    }

    /** The ground with its hatch. */
    public Fill fill() {
        return hatch.map(lines -> Fill.of(ground, lines)).orElseGet(() -> Fill.of(ground));
    }
}
