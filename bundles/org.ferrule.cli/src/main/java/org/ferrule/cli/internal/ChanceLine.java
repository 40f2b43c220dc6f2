/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.Optional;

import org.ferrule.fit.engineering.size.ChanceSearch;
import org.ferrule.fit.engineering.size.ChanceSize;
import org.ferrule.fit.engineering.size.MovableSection;
import org.ferrule.fit.engineering.size.NoChanceException;
import org.ferrule.fit.passage.FitQuestion;

/**
 * The size for a chance of overlap with one partner.
 *
 * @param partner id of the partner
 * @param target the chance aimed at
 * @param found the size; absent when it was refused
 * @param refused why; empty when it was found
 */
public record ChanceLine(String partner, double target, Optional<ChanceSize> found, String refused) {

    /** Searches, or says why not. */
    public static ChanceLine of(MovableSection section, FitQuestion question, double target) {
        if (!(target > 0 && target < 1)) {
            throw new CommandLineException("--chance must lie between 0 and 1, not " + target);
        }
        String partner = (section.isBore() ? question.inner() : question.outer()).device().id();
        try {
            return new ChanceLine(partner, target, Optional.of(ChanceSearch.of(section, question, target)), "");
        } catch (NoChanceException e) {
            return new ChanceLine(partner, target, Optional.empty(), e.getMessage());
        }
    }
}
