/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import java.util.Optional;

import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.PhaseVerdict;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.picture.Box;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;

/**
 * The look of a verdict: shape, word and tone. The further a pair is from fitting, the more its ground stands out from
 * the paper; what is not known stays paper, hatched. Grounds are told apart by their lightness first, which survives a
 * black-and-white print and every kind of colour vision.
 */
public enum VerdictLook {
    /** It fits, by geometry or on a bench. */
    FITS("fits", Glyph.SEATED, Tone.even("verdict.fits", 0xD3EAF7, 0x0A4263),
            Tone.even("verdict.fits", 0x163C54, 0xC9E8FA)),
    /** A maker's paper says that it fits, and nothing speaks against it. */
    FITS_BY_CLAIM("fits by claim", Glyph.ON_PAPER,
            Tone.even("verdict.claim", 0xE4EFF5, 0x0A4263).hatched(Hatch.Pattern.VERTICAL, 0xB9D6E6),
            Tone.even("verdict.claim", 0x1B3140, 0xC9E8FA).hatched(Hatch.Pattern.VERTICAL, 0x2E5068)),
    /** It may pass, without the clearance that is asked for. */
    TIGHT("tight", Glyph.SQUEEZED, Tone.even("verdict.tight", 0xE3A9C4, 0x4A0D2E),
            Tone.even("verdict.tight", 0x9C4B77, 0xFFF2F8)),
    /** A figure is missing that could change the answer. */
    UNKNOWN("unknown", Glyph.ASKED,
            Tone.even("verdict.unknown", 0xFFFFFF, 0x3F444B).hatched(Hatch.Pattern.RISING, 0xC6CAD0),
            Tone.even("verdict.unknown", 0x202226, 0xD5D8DD).hatched(Hatch.Pattern.RISING, 0x4A4E55)),
    /** It does not pass. */
    BLOCKED("blocked", Glyph.STOPPED, Tone.even("verdict.blocked", 0x3E2A4F, 0xFFFFFF),
            Tone.even("verdict.blocked", 0xE6DDF0, 0x2B1A3A));

    private static final double CORNER = 0.12;
    private static final double SHARE = 0.72;

    private final String word;
    private final Glyph glyph;
    private final Tone light;
    private final Tone dark;

    VerdictLook(String word, Glyph glyph, Tone light, Tone dark) {
        this.word = word;
        this.glyph = glyph;
        this.light = light;
        this.dark = dark;
    }

    /** The look of an answer. */
    public static VerdictLook of(PhaseAnswer answer) {
        return of(answer.verdict(), answer.authority());
    }

    /** The look of a cell's verdict. */
    public static VerdictLook of(PhaseVerdict verdict) {
        return of(verdict.verdict(), verdict.authority());
    }

    /** The look coming out, where the verdict is worse than going in. */
    public static Optional<VerdictLook> worseOut(FitCell cell) {
        Verdict in = cell.in().verdict();
        Verdict out = cell.out().verdict();
        return out != in && in.worse(out) == out ? Optional.of(of(cell.out())) : Optional.empty();
    }

    /** The look of a verdict that rests on an authority. */
    public static VerdictLook of(Verdict verdict, Authority authority) {
        return switch (verdict) {
            case FITS -> authority == Authority.CLAIM ? FITS_BY_CLAIM : FITS;
            case TIGHT -> TIGHT;
            case UNKNOWN -> UNKNOWN;
            case BLOCKED -> BLOCKED;
        };
    }

    /** The word for it. */
    public String word() {
        return word;
    }

    /** Its shape. */
    public Glyph glyph() {
        return glyph;
    }

    /** Its colours. */
    public Tone tone(Scheme scheme) {
        return scheme == Scheme.LIGHT ? light : dark;
    }

    /** Draws its shape in its ink, in a square of a size around a place. */
    public void drawGlyph(PictureBuilder builder, Point centre, double sizeMm, Scheme scheme) {
        Ink ink = tone(scheme).ink();
        glyph.draw(builder, centre, sizeMm, ink);
    }

    /** Draws its shape on a square of its ground, of a size around a place: where no such ground lies already. */
    public void drawSign(PictureBuilder builder, Point centre, double sizeMm, Scheme scheme) {
        Box square = new Box(centre.xMm() - sizeMm / 2, centre.yMm() - sizeMm / 2, sizeMm, sizeMm);
        builder.noPen().fill(tone(scheme).fill()).roundRect(square, CORNER * sizeMm);
        drawGlyph(builder, centre, SHARE * sizeMm, scheme);
    }
}
