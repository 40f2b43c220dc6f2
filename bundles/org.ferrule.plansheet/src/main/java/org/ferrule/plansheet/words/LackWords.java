/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.technique.Role;
import org.ferrule.fit.verdict.Verdict;

/** Why something cannot be done. */
public final class LackWords {
    private final Phrases phrases;
    private final PlanNames names;
    private static final int LINE = 130;
    private static final int MOST_REASONS = 2;

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

    /** Several of one role that is named already, in one line. */
    String why(List<Lack> lacks) {
        return lacks.stream().map(this::why).distinct().collect(Collectors.joining("; "));
    }

    /** A sentence without a full stop, with the role that nobody plays. */
    public String say(Lack lack) {
        return role(lack).map(role -> phrases.fill("lack.role", names.role(role), why(lack)))
                .orElseGet(() -> why(lack));
    }

    private static Optional<Role> role(Lack lack) {
        if (lack instanceof Lack.DoesNotPass blocked) {
            return Optional.of(blocked.role());
        }
        if (lack instanceof Lack.NotStated unknown) {
            return Optional.of(unknown.role());
        }
        if (lack instanceof Lack.NotOnShelf absent) {
            return Optional.of(absent.role());
        }
        if (lack instanceof Lack.Expired expired) {
            return Optional.of(expired.role());
        }
        return lack instanceof Lack.UsedUp used ? Optional.of(used.role()) : Optional.empty();
    }

    /** The same without the role, where it is named already. */
    public String why(Lack lack) {
        if (lack instanceof Lack.DoesNotPass blocked) {
            return doesNotPass(blocked);
        }
        if (lack instanceof Lack.NotStated unknown) {
            return phrases.get("place." + unknown.place());
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
            return phrases.fill("lack.Expired", names.item(expired.item()), expired.expiry().toString());
        }
        Lack.UsedUp used = (Lack.UsedUp) lack;
        return phrases.fill("lack.UsedUp", names.item(used.item()));
    }

    private String notOnShelf(Lack.NotOnShelf absent) {
        if (absent.wouldServe().isEmpty()) {
            return phrases.fill("lack.NotOnShelf",
                    Printable.line(absent.role().selection().equipment().orElse(names.role(absent.role()))));
        }
        return phrases.fill("lack.NotOnShelf.devices", absent.wouldServe().stream().map(names::device)
                .collect(Collectors.joining(phrases.get("or"))));
    }

    /** The first of several, with one reason and as many words as a line holds; how many more there are. */
    String brief(List<Lack> lacks) {
        String why = firstWhy(lacks);
        return shortened(role(lacks.get(0)).map(role -> phrases.fill("lack.role", names.role(role), why)).orElse(why),
                lacks);
    }

    /** The same of one role that is named already. */
    String whyInBrief(List<Lack> lacks) {
        return shortened(firstWhy(lacks), lacks);
    }

    private String firstWhy(List<Lack> lacks) {
        return lacks.get(0) instanceof Lack.DoesNotPass blocked ? doesNotPass(blocked, 1) : why(lacks.get(0));
    }

    private String shortened(String said, List<Lack> lacks) {
        String line = said.length() <= LINE ? said : said.substring(0, said.lastIndexOf(' ', LINE)) + " \u2026";
        return lacks.size() == 1 ? line : phrases.fill("lack.more", line, Integer.toString(lacks.size() - 1));
    }

    private String doesNotPass(Lack.DoesNotPass blocked) {
        return doesNotPass(blocked, MOST_REASONS);
    }

    private String doesNotPass(Lack.DoesNotPass blocked, int most) {
        boolean unknown = blocked.nearest().suitability().verdict() == Verdict.UNKNOWN;
        String device = blocked.nearest().device().map(names::device)
                .orElseGet(() -> Printable.line(blocked.nearest().name()));
        return phrases.fill(unknown ? "lack.DoesNotPass.unknown" : "lack.DoesNotPass", device,
                fits.against(blocked.nearest().suitability(), most));
    }

    private String wrongSize(Lack.WrongSize size) {
        String what = phrases.get(size.branch() ? "size.branch" : "size.vessel");
        String asked = roles.range(size.asked());
        return size.stated().map(s -> phrases.fill("lack.WrongSize", what, RoleWords.exactly(s), asked))
                .orElseGet(() -> phrases.fill("lack.WrongSize.notStated", what, asked));
    }
}
