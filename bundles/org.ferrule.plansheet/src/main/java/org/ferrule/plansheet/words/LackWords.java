/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.fit.verdict.Verdict;

/** Why something cannot be done. */
public final class LackWords {
    private final Phrases phrases;
    private final PlanNames names;
    private final RoleWords roles;
    private final FitWords fits;

    LackWords(Phrases phrases, PlanNames names, RoleWords roles, FitWords fits) {
        this.phrases = phrases;
        this.names = names;
        this.roles = roles;
        this.fits = fits;
    }

    /** Several, one after the other. */
    public List<String> say(List<Lack> lacks) {
        return lacks.stream().map(this::say).distinct().toList();
    }

    /** A sentence without a full stop. */
    public String say(Lack lack) {
        if (lack instanceof Lack.DoesNotPass blocked) {
            return doesNotPass(blocked);
        }
        if (lack instanceof Lack.NotStated unknown) {
            return phrases.fill("lack.NotStated", names.role(unknown.role()), phrases.get("place." + unknown.place()));
        }
        if (lack instanceof Lack.FactMissing missing) {
            return phrases.fill(missing.denied() ? "lack.FactMissing.denied" : "lack.FactMissing",
                    names.fact(missing.fact()));
        }
        if (lack instanceof Lack.WrongSize size) {
            return wrongSize(size);
        }
        return lack instanceof Lack.SetupImpossible setup
                ? phrases.fill("lack.SetupImpossible", names.move(setup.setup())) : ofSupply(lack);
    }

    private String ofSupply(Lack lack) {
        if (lack instanceof Lack.NothingMatches none) {
            return phrases.fill("lack.NothingMatches", roles.asked(none.role()));
        }
        if (lack instanceof Lack.NotOnShelf absent) {
            return notOnShelf(absent);
        }
        if (lack instanceof Lack.Expired expired) {
            return phrases.fill("lack.Expired", names.role(expired.role()), names.item(expired.item()),
                    expired.expiry().toString());
        }
        Lack.UsedUp used = (Lack.UsedUp) lack;
        return phrases.fill("lack.UsedUp", names.role(used.role()), names.item(used.item()));
    }

    private String notOnShelf(Lack.NotOnShelf absent) {
        String role = names.role(absent.role());
        if (absent.wouldServe().isEmpty()) {
            return phrases.fill("lack.NotOnShelf", role,
                    Printable.line(absent.role().selection().equipment().orElse(role)));
        }
        return phrases.fill("lack.NotOnShelf.devices", role, absent.wouldServe().stream().map(names::device)
                .collect(Collectors.joining(phrases.get("or"))));
    }

    private String doesNotPass(Lack.DoesNotPass blocked) {
        boolean unknown = blocked.nearest().suitability().verdict() == Verdict.UNKNOWN;
        String device = blocked.nearest().device().map(names::device)
                .orElseGet(() -> Printable.line(blocked.nearest().name()));
        return phrases.fill(unknown ? "lack.DoesNotPass.unknown" : "lack.DoesNotPass", names.role(blocked.role()),
                device, fits.against(blocked.nearest().suitability()));
    }

    private String wrongSize(Lack.WrongSize size) {
        String what = phrases.get(size.branch() ? "size.branch" : "size.vessel");
        String asked = roles.range(size.asked());
        return size.stated().map(s -> phrases.fill("lack.WrongSize", what, RoleWords.exactly(s), asked))
                .orElseGet(() -> phrases.fill("lack.WrongSize.notStated", what, asked));
    }
}
