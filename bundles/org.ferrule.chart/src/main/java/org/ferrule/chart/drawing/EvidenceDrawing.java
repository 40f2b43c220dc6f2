/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;

/**
 * Pictures of what checks have to show. Groups are named for hit-testing: {@code lumen}, {@code body:DEVICE} and
 * {@code clearance} of a shared section, {@code bend} and {@code rigid}, {@code open}, {@code link:NUMBER} and
 * {@code margin}, {@code curve}.
 */
public final class EvidenceDrawing {
    private final ReasonWords words;

    /** Drawings with these words and units. */
    public EvidenceDrawing(ReasonWords words) {
        this.words = words;
    }

    /** What the evidence is about, in a few words. */
    public String title(Evidence evidence) {
        if (evidence instanceof LengthChain chain) {
            return words.phrases().get("evidence.chain." + chain.question());
        }
        return words.phrases().get("evidence." + evidence.getClass().getSimpleName());
    }

    /** A picture of it. */
    public Picture of(Evidence evidence, double widthMm, double heightMm) {
        Zones zones = new Zones(widthMm, heightMm);
        PictureBuilder builder = new PictureBuilder();
        String title = Printable.line(title(evidence));
        builder.lettering(zones.titleStyle()).text(zones.left(), zones.titleBaseline(),
                TextLayout.standard().shorten(title, zones.titleStyle(), zones.right() - zones.left()));
        String description = paint(builder, evidence, zones);
        return builder.picture(widthMm, heightMm, title).described(Printable.line(description));
    }

    private String paint(PictureBuilder g, Evidence evidence, Zones zones) {
        if (evidence instanceof SharedSection section) {
            return new SharedScene(section, words, zones).draw(g);
        }
        if (evidence instanceof BendRoom bend) {
            return new BendScene(bend, words, zones).draw(g);
        }
        if (evidence instanceof FlowLeft flow) {
            return new FlowScene(flow, words, zones).draw(g);
        }
        if (evidence instanceof LengthChain chain) {
            return new ChainScene(chain, words, zones).draw(g);
        }
        return new ChanceScene((Chance) evidence, words, zones).draw(g);
    }
}
