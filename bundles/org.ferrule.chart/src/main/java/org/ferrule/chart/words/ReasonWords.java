/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.words.Template.Place;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.Reason.Argument;
import org.ferrule.fit.verdict.Reason.ClearanceArgument;
import org.ferrule.fit.verdict.Reason.CountArgument;
import org.ferrule.fit.verdict.Reason.DiameterArgument;
import org.ferrule.fit.verdict.Reason.DistanceArgument;
import org.ferrule.fit.verdict.Reason.NameArgument;
import org.ferrule.fit.verdict.Reason.ShareArgument;
import org.ferrule.fit.verdict.Reason.SourceArgument;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/** Says reasons in words. Immutable. */
public final class ReasonWords {
    private final Phrases phrases;
    private final LengthWords lengths;

    /** Words in a language and in units. */
    public ReasonWords(Phrases phrases, UnitPreferences units) {
        this.phrases = phrases;
        this.lengths = new LengthWords(units);
    }

    /** English words. */
    public static ReasonWords english(UnitPreferences units) {
        return new ReasonWords(Phrases.english(), units);
    }

    /** A reason by itself, without a full stop. */
    public String say(Reason reason, PairNames pair) {
        return fill(reason, Context.alone(pair), "");
    }

    /** A reason of an answer, without a full stop; the section that decides is named with the wire beside it. */
    public String say(Reason reason, PhaseAnswer answer, PairNames pair) {
        return fill(reason, Context.of(answer, pair), "");
    }

    /** A reason as a footnote that many cells can share: without the figures that stand in the cell. */
    public String note(Reason reason, PhaseAnswer answer, PairNames pair) {
        return fill(reason, Context.of(answer, pair), ".note");
    }

    private String fill(Reason reason, Context context, String use) {
        return new Template(template(reason, context.pair, use)).fill(place -> words(reason, place, context));
    }

    /**
     * Of which pair and which answer a reason is.
     *
     * @param pair the names of its devices
     * @param part how the section that decides is called, whose figure is that of all that lies there
     */
    private record Context(PairNames pair, String part) {

        static Context alone(PairNames pair) {
            return new Context(pair, "section.alone");
        }

        static Context of(PhaseAnswer answer, PairNames pair) {
            if (answer.reasons().stream().anyMatch(r -> r.code() == ReasonCode.LIES_BESIDE)) {
                return new Context(pair, "section.withOthers");
            }
            boolean wireBeside = answer.reasons().stream().anyMatch(r -> r.code() == ReasonCode.OWN_WIRE_BESIDE
                    && r.arguments().get(0).equals(Reason.name(pair.innerId())));
            return wireBeside ? new Context(pair, "section.withWire") : alone(pair);
        }
    }

    /** How lengths are written. */
    public LengthWords lengths() {
        return lengths;
    }

    /** The templates in use. */
    public Phrases phrases() {
        return phrases;
    }

    /** A section of a device. */
    public String section(String name) {
        return name.isEmpty() ? phrases.get("section.unnamed") : name;
    }

    /** A lumen or a section of it. */
    public String bore(String name) {
        String unnamed = phrases.get("bore.unnamed");
        if (name.isEmpty()) {
            return unnamed;
        }
        return name.endsWith(unnamed) ? name : phrases.fill("bore.named", name);
    }

    /** The most special template that there is. */
    String template(Reason reason, PairNames pair, String use) {
        String code = reason.code().name();
        List<String> keys = new ArrayList<>();
        for (String variant : variants(reason, pair)) {
            keys.add(code + variant + use);
            keys.add(code + variant);
        }
        keys.add(code + use);
        return keys.stream().map(phrases::find).flatMap(Optional::stream).findFirst()
                .orElseGet(() -> phrases.get(code));
    }

    private static List<String> variants(Reason reason, PairNames pair) {
        if (reason.arguments().isEmpty()) {
            return List.of();
        }
        Argument first = reason.arguments().get(0);
        if (first instanceof NameArgument name) {
            return name.value().equals(pair.innerId()) ? List.of(".inner")
                    : name.value().equals(pair.outerId()) ? List.of(".outer") : List.of();
        }
        return length(first).filter(Length::isNegative).map(l -> List.of(".overlap")).orElse(List.of());
    }

    private static Optional<Length> length(Argument argument) {
        if (argument instanceof ClearanceArgument clearance) {
            return Optional.of(clearance.value());
        }
        return argument instanceof DistanceArgument distance ? Optional.of(distance.value()) : Optional.empty();
    }

    private String words(Reason reason, Place place, Context context) {
        Argument argument = argument(reason, place);
        if (argument instanceof NameArgument name) {
            return name(reason, name.value(), place.role(), context);
        }
        if (argument instanceof DiameterArgument diameter) {
            return diameter(diameter.value(), place.role());
        }
        if (argument instanceof DistanceArgument distance) {
            return distance(distance.value(), place.role());
        }
        if (argument instanceof ClearanceArgument clearance) {
            return clearance(reason, clearance.value(), place);
        }
        if (argument instanceof ShareArgument share) {
            return share(share.value(), place.role());
        }
        return argument instanceof SourceArgument source ? source(source.value())
                : samples(((CountArgument) argument).value());
    }

    private static Argument argument(Reason reason, Place place) {
        boolean there = place.index() < reason.arguments().size();
        if (!there || !place.role().takes(reason.arguments().get(place.index()))) {
            throw new IllegalArgumentException("the template of " + reason.code() + " wants argument " + place.index()
                    + " as " + place.role() + ", but the arguments are " + reason.arguments());
        }
        return reason.arguments().get(place.index());
    }

    private String name(Reason reason, String value, Role role, Context context) {
        return switch (role) {
            case SECTION -> section(value);
            case PART -> phrases.fill(context.part, section(value));
            case BORE -> bore(value);
            case PLACE -> value.isEmpty() ? "" : isOfLumen(reason) ? bore(value) : section(value);
            case NAME -> context.pair.nameOf(value);
            default -> value;
        };
    }

    private static boolean isOfLumen(Reason reason) {
        return reason.arguments().contains(Reason.name(FigureClass.INNER_DIAMETER.word()));
    }

    private static String share(double value, Role role) {
        return switch (role) {
            case ATBEST -> ShareWords.atMost(value);
            case ATWORST -> ShareWords.atLeast(value);
            default -> ShareWords.plain(value);
        };
    }

    private String distance(Length value, Role role) {
        return switch (role) {
            case SHORTFALL -> lengths.shortfall(value);
            case ROOM -> lengths.room(value);
            default -> lengths.length(value);
        };
    }

    private String diameter(Length value, Role role) {
        return switch (role) {
            case DEVICE -> lengths.device(value);
            case LUMEN -> lengths.lumen(value);
            default -> lengths.plain(value);
        };
    }

    /** A clearance that another one follows is written so that it shows which is larger. */
    private String clearance(Reason reason, Length value, Place place) {
        if (place.role() == Role.REQUIRED) {
            return lengths.required(value);
        }
        if (place.role() == Role.OVERLAP) {
            return lengths.overlap(value);
        }
        int next = place.index() + 1;
        boolean compared = next < reason.arguments().size()
                && reason.arguments().get(next) instanceof ClearanceArgument;
        return compared ? lengths.clearance(value, ((ClearanceArgument) reason.arguments().get(next)).value())
                : lengths.clearance(value);
    }

    private static String source(SourceRef source) {
        return source.isNone() ? "" : source.toString();
    }

    private String samples(int count) {
        if (count == 0) {
            return "";
        }
        return count == 1 ? phrases.get("samples.one") : phrases.fill("samples.many", Integer.toString(count));
    }
}
