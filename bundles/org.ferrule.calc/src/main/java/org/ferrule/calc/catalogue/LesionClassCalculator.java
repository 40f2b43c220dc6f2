/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.quantity.Length;
import org.ferrule.thresholds.lesion.LesionClass;
import org.ferrule.thresholds.lesion.LesionTrait;

/** The class A, B1, B2 or C of a lesion. */
final class LesionClassCalculator extends WordedCalculator {
    /** What length and bend say, so that it cannot be said a second time. */
    private static final Set<LesionTrait> MEASURED = EnumSet.of(LesionTrait.TUBULAR, LesionTrait.DIFFUSE,
            LesionTrait.ANGULATED, LesionTrait.EXTREMELY_ANGULATED);

    private final Parameter<Length> length = parameter("length", Kinds.LENGTH, Occurrence.REQUIRED,
            Limits.aboveTo("0 mm", "500 mm"));
    private final Parameter<Double> bend = parameter("bend", Kinds.ANGLE, Occurrence.REQUIRED,
            Limits.fromTo("0 deg", "180 deg"));
    private final Parameter<String> trait = parameter("trait", Kinds.oneOf(words()), Occurrence.REPEATED,
            Limits.NONE);

    LesionClassCalculator() {
        super("lesion-class");
    }

    private static String[] words() {
        return Arrays.stream(LesionTrait.values()).filter(trait -> !MEASURED.contains(trait))
                .map(LesionClassCalculator::word).toArray(String[]::new);
    }

    private static String word(LesionTrait trait) {
        return trait.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Set<LesionTrait> traits = EnumSet.noneOf(LesionTrait.class);
        LesionTrait.ofLength(LesionMeasures.mm(arguments.get(length))).ifPresent(traits::add);
        LesionTrait.ofBend(LesionMeasures.degrees(arguments.get(bend))).ifPresent(traits::add);
        Arrays.stream(LesionTrait.values()).filter(known -> arguments.all(trait).contains(word(known)))
                .forEach(traits::add);
        Calculation answer = answer("traits", BigDecimal.valueOf(traits.size()), "1")
                .with(Detail.of("class", LesionClass.of(traits).name()));
        return withWords(withWords(answer, "typeB", words(traits, false)), "typeC", words(traits, true));
    }

    private static Calculation withWords(Calculation answer, String name, List<String> words) {
        return words.isEmpty() ? answer : answer.with(Detail.texts(name, words));
    }

    private static List<String> words(Set<LesionTrait> traits, boolean ofTypeC) {
        return traits.stream().filter(found -> found.isOfTypeC() == ofTypeC).map(LesionClassCalculator::word).toList();
    }
}
