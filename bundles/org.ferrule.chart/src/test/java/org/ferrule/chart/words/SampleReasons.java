/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.ferrule.fit.verdict.Reason.clearance;
import static org.ferrule.fit.verdict.Reason.count;
import static org.ferrule.fit.verdict.Reason.diameter;
import static org.ferrule.fit.verdict.Reason.distance;
import static org.ferrule.fit.verdict.Reason.name;
import static org.ferrule.fit.verdict.Reason.share;
import static org.ferrule.fit.verdict.Reason.source;

import java.util.Arrays;
import java.util.Optional;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;

/** One reason of every code, with the arguments that its documentation names. */
final class SampleReasons {
    static final PairNames PAIR = new PairNames("g6", "Halden guide", "b2", "Lutra balloon");

    private static final SourceRef SHEET = new SourceRef("Sheet 12", "B", "4");

    private SampleReasons() {
    }

    static Reason of(ReasonCode code) {
        return switch (code) {
            case STOPS_SHORT, CAUGHT_ON_WITHDRAWAL -> Reason.of(code, distance(mm(314)), name("proximal shaft"),
                    diameter(mm(1.07)), name(""), diameter(mm(1.02)));
            case LESS_THAN_REQUIRED -> compared(code, 0.0312);
            case ENOUGH_CLEARANCE -> compared(code, 0.1288);
            case MISSING_FIGURE -> Reason.of(code, name("b2"), name("outer diameter"), name("window"));
            case UNREADABLE_FIGURE -> Reason.of(code, name("b2"), name("1,02 mm"), name("shaft"));
            case UNCOVERED_STRETCH -> Reason.of(code, name("b2"), distance(mm(4)), distance(mm(190)));
            case TOO_SHORT -> Reason.of(code, distance(mm(55.01)), distance(mm(1350)), distance(mm(1405.01)));
            case SHORT_WITH_VALVE -> Reason.of(code, distance(mm(30)), distance(mm(80)), source(SHEET));
            case PORT_OUTSIDE -> Reason.of(code, name("b2"), distance(mm(12)), distance(mm(250)), distance(mm(262)));
            case RIGID_STOPS_IN_BEND, RIGID_PASSES_BEND -> Reason.of(code, name("burr"), distance(mm(10)),
                    distance(mm(9.7598)), distance(mm(20)));
            case RIGID_TIGHT_IN_BEND -> Reason.of(code, clearance(mm(0.0312)), clearance(mm(0.05)), name("burr"),
                    distance(mm(10)), distance(mm(20)));
            case FLOW_TOO_LOW, FLOW_MAY_BE_LOW -> Reason.of(code, name("contrast"), share(0.1349), share(0.3),
                    source(SHEET));
            case LARGER_THAN_VESSEL -> Reason.of(code, name("Halden sheath"), diameter(mm(2.5)), diameter(mm(2.2)));
            case CHANCE_TOO_HIGH -> Reason.of(code, share(0.003645), share(0.001), source(SHEET));
            case CHANCE_OF_OVERLAP -> Reason.of(code, share(0.003645), name("balloon"), name("working"));
            case LITTLE_OVERLAP -> Reason.of(code, name("Halden extension"), distance(mm(40)), distance(mm(50)),
                    source(SHEET));
            case COLLAR_BEYOND_TIP -> Reason.of(code, name("Halden extension"), distance(mm(40)));
            case TUBE_NOT_STATED, EXCHANGE_BY_EXTENSION -> Reason.of(code, name("Halden extension"));
            case VESSEL_MUST_STRAIGHTEN -> Reason.of(code, name("stent"), distance(mm(18)), distance(mm(10)),
                    distance(mm(21.021)));
            case VESSEL_MUST_BE_WIDE -> Reason.of(code, name("stent"), distance(mm(18)), distance(mm(10)),
                    diameter(mm(3.1)));
            case BEND_SHORTER_THAN_PART -> Reason.of(code, distance(mm(8)), distance(mm(18)));
            case BEND_NARROWER_THAN_LUMEN -> Reason.of(code, distance(mm(1.5)), diameter(mm(1.778)));
            case EXCHANGE_WIRE_SHORT -> Reason.of(code, name("Lutra wire"), distance(mm(780)), distance(mm(1900)),
                    distance(mm(2680)), source(SHEET));
            case LANDING_OF_PLANE, LANDING_OF_MARKER -> Reason.of(code, name("b2"), distance(mm(20)),
                    distance(mm(80)));
            case LENGTH_NOT_STATED, PORT_NOT_STATED, OWN_WIRE_NOT_STATED -> Reason.of(code, name("b2"));
            case LIES_BESIDE -> Reason.of(code, name("m26"), name("shaft"), diameter(mm(0.867)),
                    diameter(mm(1.733)));
            case COLLAR_OUTSIDE, REACH_FROM_EXTENSION -> Reason.of(code, name("x6"), distance(mm(40)));
            case CLAIM_SAYS_YES, CLAIM_SAYS_NO -> Reason.of(code, name("b2"), diameter(mm(1.778)),
                    name("0.070 in min"), source(SHEET));
            case CLAIM_NAMES_PARTNER, CLAIM_EXCLUDES_PARTNER -> Reason.of(code, name("g6"), source(SHEET));
            case BENCH_PASSED, BENCH_DID_NOT_PASS -> Reason.of(code, count(5), source(SHEET));
            case YES_AGAINST_GEOMETRY -> Reason.of(code, clearance(mm(-0.0421)));
            case NO_AGAINST_GEOMETRY -> Reason.of(code, clearance(mm(0.0899)));
            case CLAIM_AGAINST_BENCH -> Reason.of(code, source(SHEET));
            case CLAIMS_DISAGREE, BENCH_RESULTS_DISAGREE -> Reason.of(code, source(SHEET),
                    source(new SourceRef("Sheet 13", "", "")));
            case COLLAR_STEP, OPEN_EDGE -> Reason.of(code);
            case EXTENSION_TOO_THICK -> Reason.of(code, name("x6"), diameter(mm(1.702)), diameter(mm(1.473)));
            case AFTER_USE_ASSUMED -> Reason.of(code, name("balloon"), diameter(mm(0.861)), diameter(mm(0.92)),
                    diameter(mm(1.041)), source(SHEET));
            case SPAN_ASSUMED -> Reason.of(code, name("b2"), name("0.82 mm"), name("balloon"), diameter(mm(0.7949)),
                    diameter(mm(0.9001)), source(SHEET));
            case OWN_WIRE_BESIDE -> Reason.of(code, name("b2"), diameter(mm(0.3556)));
            case NOT_PROVED -> Reason.of(code, clearance(mm(-0.02)));
        };
    }

    /** An answer with a sample of each of these reasons. */
    static PhaseAnswer answer(ReasonCode... codes) {
        return new PhaseAnswer(Verdict.BLOCKED, Authority.GEOMETRY, Verdict.BLOCKED, Optional.empty(),
                Optional.empty(), Optional.empty(), Arrays.stream(codes).map(SampleReasons::of).toList());
    }

    private static Reason compared(ReasonCode code, double worst) {
        return Reason.of(code, clearance(mm(worst)), clearance(mm(0.05)), name("balloon"), name("working"));
    }
}
