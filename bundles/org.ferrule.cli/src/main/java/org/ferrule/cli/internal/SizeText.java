/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.size.Flip;
import org.ferrule.fit.engineering.size.Holds;
import org.ferrule.fit.engineering.size.PartnerSizes;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.engineering.size.Size;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;

/** A required size in words. */
public final class SizeText {
    private final RequiredSize required;
    private final boolean bore;
    private final Sizes sizes;

    public SizeText(RequiredSize required) {
        this.required = required;
        this.bore = required.section().isBore();
        this.sizes = Sizes.of(bore);
    }

    /** What the whole answer comes to. */
    public String summary(Verdict keep, Phase phase) {
        String way = phase == Phase.IN ? "going in: " : "coming out: ";
        Optional<Size> limit = required.limit(keep, phase);
        if (limit.isEmpty()) {
            return way + "no size keeps every partner at \"" + keep.word() + "\"";
        }
        if (limit.get().equals(bore ? required.least() : required.most())) {
            return way + "every size that was looked at keeps every partner at \"" + keep.word() + "\"";
        }
        return way + (bore ? "the smallest" : "the largest") + " that keeps every partner at \"" + keep.word() + "\": "
                + sizes.format(limit.get());
    }

    /** One line for each partner. */
    public List<String> partners(Phase phase) {
        return required.partners().stream().filter(p -> p.phase() == phase).map(this::line).toList();
    }

    /** The size for a chance of overlap, or why there is none. */
    public String chance(ChanceLine line) {
        String head = "chance of overlap within " + line.target() + ", " + line.partner() + ": ";
        return head + line.found().map(f -> (bore ? "from " : "up to ") + sizes.format(f.size()))
                .orElseGet(() -> "refused: " + line.refused());
    }

    private String line(PartnerSizes partner) {
        String id = bore ? partner.question().inner().device().id() : partner.question().outer().device().id();
        return id + ": " + flips(partner.flips(), partner.easiest().verdict())
                + partner.heldBy().map(h -> held(h, partner)).orElse("") + geometry(partner);
    }

    private String flips(List<Flip> flips, Verdict always) {
        if (flips.isEmpty()) {
            return always.word() + " at every size";
        }
        StringBuilder text = new StringBuilder(flips.get(0).below().word());
        for (Flip flip : flips) {
            text.append(bore ? ", from " + sizes.format(flip.first()) + " on "
                    : " up to " + sizes.format(flip.last()) + ", then ").append(flip.above().word());
        }
        return text.toString();
    }

    /** Where a statement has its say, what the geometry alone asks for. */
    private String geometry(PartnerSizes partner) {
        Authority easiest = partner.easiest().authority();
        Authority speaks = easiest != Authority.GEOMETRY ? easiest : partner.hardest().authority();
        String alone = "; by geometry alone " + flips(partner.geometryFlips(), partner.easiest().geometry()) + ")";
        return switch (speaks) {
            case CLAIM -> " (a claim has its say" + alone;
            case BENCH -> " (a bench result has its say" + alone;
            case GEOMETRY -> "";
        };
    }

    private String held(Holds holds, PartnerSizes partner) {
        return switch (holds) {
            case CLAIM -> "; a claim of the papers decides";
            case BENCH -> "; a bench result decides";
            case ANOTHER_CHECK -> "; another check decides, such as the length";
            case MISSING_FIGURE -> "; a figure or a length is missing elsewhere";
            case ANOTHER_SECTION -> "; another place is tighter"
                    + partner.easiest().limiting().map(SizeText::place).orElse("");
            case NEVER_MET -> statedAfterUse(partner) ? "; its profile after use is stated by itself"
                    : "; the section meets nothing that is narrower";
        };
    }

    private boolean statedAfterUse(PartnerSizes partner) {
        return partner.phase() == Phase.OUT && required.section().place() instanceof Place.Shaft shaft
                && shaft.section().afterUse() == AfterUse.STATED;
    }

    private static String place(Limiting limiting) {
        return ": \"" + limiting.deviceSection() + "\" in \"" + limiting.lumenSection() + "\"";
    }
}
