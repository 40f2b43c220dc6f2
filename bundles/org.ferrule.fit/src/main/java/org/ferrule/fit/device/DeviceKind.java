/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

/**
 * What a device is called in the trade: for grouping, naming and the scope of rules; its abilities come from its parts.
 */
public enum DeviceKind {
    INTRODUCER_SHEATH("introducer sheath"), GUIDE_CATHETER("guide catheter"), GUIDE_EXTENSION("guide extension"),
    INNER_CATHETER("inner catheter"), MICROCATHETER("microcatheter"),
    DUAL_LUMEN_MICROCATHETER("dual-lumen microcatheter"), GUIDEWIRE("guidewire"),
    BALLOON_CATHETER("balloon catheter"), SCORING_BALLOON("scoring balloon"),
    CUTTING_BALLOON("cutting balloon"), LITHOTRIPSY_BALLOON("lithotripsy balloon"), STENT_SYSTEM("stent system"),
    COVERED_STENT_SYSTEM("covered stent system"), ROTATIONAL_BURR("rotational burr"), ORBITAL_CROWN("orbital crown"),
    LASER_CATHETER("laser catheter"), IMAGING_CATHETER("imaging catheter"), ASPIRATION_CATHETER("aspiration catheter"),
    SNARE("snare"), COIL("coil"), DRAIN_CATHETER("drain catheter"), HAEMOSTASIS_VALVE("haemostasis valve"),
    DILATOR("dilator"), OTHER("other");

    private final String word;

    DeviceKind(String word) {
        this.word = word;
    }

    /** The word for it, as documents and screens write it. */
    public String word() {
        return word;
    }

    /**
     * The kind that a document names.
     *
     * @throws IllegalArgumentException naming the word when no kind bears it
     */
    public static DeviceKind ofWord(String word) {
        for (DeviceKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no device kind is called \"" + word + "\"");
    }
}
