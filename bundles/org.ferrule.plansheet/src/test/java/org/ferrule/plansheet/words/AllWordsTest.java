/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Choice;
import org.ferrule.escalation.equipment.Crossing;
import org.ferrule.escalation.equipment.Filling;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.Suitability;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Progress;
import org.ferrule.escalation.plan.Remedy;
import org.ferrule.escalation.plan.WireCheck;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.Hazard;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.ShareRange;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.escalation.technique.Task;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Nothing that a plan can hold is without words, and no words keep a place for a figure that nobody fills. */
class AllWordsTest {
    private static final LengthRange RANGE = new LengthRange(Optional.of(mm(1.5)), Optional.of(mm(2.5)));
    private static final Role ROLE = new Role("balloon", "small balloon",
            new Selection(Set.of(DeviceKind.BALLOON_CATHETER), Set.of(), RANGE, RANGE,
                    new LengthRange(Optional.of(mm(0.3)), Optional.empty()),
                    new ShareRange(OptionalDouble.empty(), OptionalDouble.of(1)), Optional.empty()),
            Task.FILL, Carrier.MAIN_WIRE, Goal.IN_GUIDE, 2, true);

    private final PlanWords words = SamplePlan.words(SamplePlan.plan().ladder());
    private final Phrases phrases = words.phrases();

    @Test
    void everyConstantHasWordsOfItsOwn() {
        assertDistinct(Choice.values(), "choice.");
        assertDistinct(LeftOut.Why.values(), "leftOut.");
        assertDistinct(WireCheck.values(), "wire.");
        assertDistinct(Lack.Place.values(), "place.");
        assertDistinct(Progress.LogProblem.Kind.values(), "log.");
        assertDistinct(Slot.values(), "slot.");
        assertDistinct(Hazard.values(), "hazard.");
        assertDistinct(Crossing.Way.values(), "way.");
        assertDistinct(Verdict.values(), "filling.");
        assertDistinct(Verdict.values(), "delivery.");
        assertDistinct(Resource.values(), "resource.");
        assertDistinct(Resource.values(), "unit.");
        assertDistinct(Task.values(), "role.duty.");
        assertDistinct(Carrier.values(), "carrier.");
        assertDistinct(Goal.values(), "goal.");
    }

    private void assertDistinct(Enum<?>[] constants, String prefix) {
        Set<String> found = Arrays.stream(constants).map(constant -> phrases.get(prefix + constant.name()))
                .filter(text -> !text.isBlank()).collect(Collectors.toCollection(HashSet::new));
        assertEquals(constants.length, found.size(), prefix);
    }

    @Test
    void everyKindOfLackIsSaid() {
        List<Lack> lacks = new ArrayList<>(List.of(new Lack.NothingMatches(ROLE),
                new Lack.NotOnShelf(ROLE, List.of()), new Lack.NotOnShelf(ROLE, List.of("b10")),
                new Lack.Expired(ROLE, "sb-10", LocalDate.of(2026, 1, 31)), new Lack.UsedUp(ROLE, "sb-10"),
                new Lack.FactMissing("staff", false), new Lack.FactMissing("staff", true),
                new Lack.WrongSize(true, RANGE, Optional.empty()),
                new Lack.WrongSize(false, RANGE, Optional.of(mm(3))), new Lack.SetupImpossible("extension")));
        for (Lack.Place place : Lack.Place.values()) {
            lacks.add(new Lack.NotStated(ROLE, place));
        }
        for (Verdict verdict : Verdict.values()) {
            lacks.add(new Lack.DoesNotPass(ROLE, filling(verdict, Optional.of(mm(2)))));
        }
        assertSaid(Lack.class, lacks, words.lacks()::say);
    }

    private static Candidate filling(Verdict verdict, Optional<Length> diameter) {
        return new Candidate(Optional.of("b10"), "b10",
                new Suitability(List.of(), Optional.of(new Filling(diameter, Optional.of(mm(1.8)), verdict))),
                new Candidate.Supply(List.of(), 0, 0, List.of()));
    }

    @Test
    void everyKindOfRemedyIsSaid() {
        List<Remedy> remedies = new ArrayList<>(List.of(new Remedy.State("staff"), new Remedy.Obtain("b10"),
                new Remedy.Obtain("console"), new Remedy.ExchangeGuide("guide-7", true, "b10"),
                new Remedy.ExchangeGuide("guide-7", false, "b10")));
        for (Slot slot : Slot.values()) {
            remedies.add(new Remedy.TakeOut(slot, "b10"));
        }
        assertSaid(Remedy.class, remedies, words.leftOut()::remedy);
    }

    @Test
    void everyKindOfNeedIsSaid() {
        assertSaid(Need.class, List.of(new Need.Fact("staff"), new Need.Vessel(RANGE), new Need.Branch(RANGE)),
                words.roles()::need);
    }

    /** Every kind that the sealed type permits is there, each is said otherwise, and no place is left open. */
    private static <T> void assertSaid(Class<T> type, List<T> values, java.util.function.Function<T, String> say) {
        Set<Class<?>> kinds = values.stream().map(Object::getClass).collect(Collectors.toSet());
        assertEquals(Set.of(type.getPermittedSubclasses()), kinds);
        List<String> said = values.stream().map(say).toList();
        said.forEach(text -> assertFalse(text.isBlank() || text.contains("{"), text));
        assertEquals(values.size(), new HashSet<>(said).size(), said::toString);
    }

    @Test
    void aRoleIsAskedForWithAllThatIsAskedOfIt() {
        assertEquals("small balloon: balloon catheter, \u00d8 1.5 to 2.5 mm, 1.5 to 2.5 mm long, "
                + "wire of 0.3 mm or more, 1 or less times the diameter of its vessel; 2 of them; "
                + "only if the wire is too short to exchange over it", words.roles().asked(ROLE));
        assertEquals("runs on the main wire, has to come into the guide and stay there and to fill the lumen there",
                words.roles().duty(ROLE));
    }

    @Test
    void whatIsUsedUpIsNeverRoundedDown() {
        Amounts amounts = words.budgets().amounts();
        assertEquals("12.4 min", amounts.used(Resource.TIME, 12.31));
        assertEquals("0.3 min", amounts.used(Resource.TIME, 0.1 + 0.2));
        assertEquals("151 mGy", amounts.used(Resource.DOSE, 150.2));
        assertEquals("310 EUR", amounts.used(Resource.MONEY, 310));
        assertEquals("12.25 mL", amounts.stated(Resource.CONTRAST, 12.25));
        assertEquals("0.33", Amounts.share(1 / 3.0));
    }

    @Test
    void namesFallBackOnIds() {
        assertEquals("Lutra balloon b10", words.names().device("b10"));
        assertEquals("nobody", words.names().device("nobody"));
        assertEquals("nothing", words.names().item("nothing"));
        assertEquals(List.of("Guide extension in place", "no-move"),
                Stream.of("extension", "no-move").map(words.names()::move).toList());
    }
}
