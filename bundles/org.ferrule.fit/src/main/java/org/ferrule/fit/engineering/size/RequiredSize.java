/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.verdict.Verdict;

/**
 * How large a section may be for its partners: of a shaft how thick at most, of a lumen how wide at least.
 *
 * @param section what is moved
 * @param least the smallest size that was looked at: where a figure becomes zero
 * @param most the largest size that was looked at
 * @param partners two for each question, going in and coming out, in the order asked
 */
public record RequiredSize(MovableSection section, Size least, Size most, List<PartnerSizes> partners) {

    public RequiredSize {
        partners = List.copyOf(partners);
    }

    /** A flip of one partner. */
    public record PartnerFlip(PartnerSizes partner, Flip flip) {
    }

    /** All flips of a phase in rising size. */
    public List<PartnerFlip> flips(Phase phase) {
        List<PartnerFlip> flips = new ArrayList<>();
        of(phase).forEach(partner -> partner.flips().forEach(flip -> flips.add(new PartnerFlip(partner, flip))));
        flips.sort(Comparator.comparing(f -> f.flip().last().distal()));
        return flips;
    }

    /**
     * The largest size of a shaft, the smallest of a lumen, at which every partner has that verdict or a better one.
     * Absent when no size does that; the end that was looked at when none is too large or too small.
     */
    public Optional<Size> limit(Verdict verdict, Phase phase) {
        Size limit = section.isBore() ? least : most;
        for (PartnerSizes partner : of(phase)) {
            Optional<Size> own = limit(partner, verdict);
            if (own.isEmpty()) {
                return Optional.empty();
            }
            limit = stricter(limit, own.get());
        }
        return Optional.of(limit);
    }

    /** The same for one partner alone. */
    public Optional<Size> limit(PartnerSizes partner, Verdict verdict) {
        if (partner.easiest().verdict().compareTo(verdict) > 0) {
            return Optional.empty();
        }
        if (section.isBore()) {
            return Optional.of(partner.flips().stream().filter(f -> f.below().compareTo(verdict) > 0).map(Flip::first)
                    .reduce((a, b) -> b).orElse(least));
        }
        return Optional.of(partner.flips().stream().filter(f -> f.above().compareTo(verdict) > 0).map(Flip::last)
                .findFirst().orElse(most));
    }

    private List<PartnerSizes> of(Phase phase) {
        return partners.stream().filter(p -> p.phase() == phase).toList();
    }

    private Size stricter(Size a, Size b) {
        boolean smaller = a.distal().compareTo(b.distal()) <= 0;
        return smaller == section.isBore() ? b : a;
    }
}
