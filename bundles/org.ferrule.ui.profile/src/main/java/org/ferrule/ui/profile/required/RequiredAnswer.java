/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.required;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.sensitivity.Influence;
import org.ferrule.fit.engineering.sensitivity.Sensitivity;
import org.ferrule.fit.engineering.size.MovableSection;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.engineering.size.SizeSearch;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.ui.fit.passage.ProjectDevices;

/**
 * What came of a request: flips and influences, or what stands in their way.
 *
 * @param required the flips of every partner; absent when there are none
 * @param influences the figures on which the verdicts of device and partners rest, the weightiest first
 * @param problem in words; empty when there is an answer
 * @param rules that were in force; absent with the flips
 */
public record RequiredAnswer(Optional<RequiredSize> required, List<Influence> influences, String problem,
        Optional<RuleSet> rules) {

    /** Nothing is chosen. */
    public static final String FIRST = "Choose a device, one of its sections, and partners that it is to go with.";

    /** Copies the list. */
    public RequiredAnswer {
        influences = List.copyOf(influences);
    }

    static RequiredAnswer problem(String words) {
        return new RequiredAnswer(Optional.empty(), List.of(), words, Optional.empty());
    }

    /** Answers with the devices of a project as they stand. */
    static RequiredAnswer of(ProjectDevices project, RequiredRequest asked, List<FitCheck> checks) {
        try {
            Optional<CataloguedDevice> device = device(project, asked);
            if (device.isEmpty() || asked.partners().isEmpty()) {
                return problem(FIRST);
            }
            List<Place> places = places(device.get().device());
            if (places.isEmpty()) {
                return problem("Nothing of this device can be moved: no round section is described.");
            }
            return answer(project, asked, places.get(Math.min(Math.max(0, asked.section()), places.size() - 1)),
                    checks);
        } catch (ReferenceException | RuleSetException | IllegalArgumentException | IllegalStateException e) {
            return problem(e.getMessage());
        }
    }

    /** The device that is asked about. */
    static Optional<CataloguedDevice> device(ProjectDevices project, RequiredRequest asked) {
        return asked.devices().stream().findFirst().flatMap(reference -> project.catalogue().devices().stream()
                .filter(found -> found.isCalled(reference)).findFirst());
    }

    /** The sections of a device that can be moved: round ones of its shaft, then those of its lumens. */
    static List<Place> places(Device device) {
        List<Place> places = new ArrayList<>();
        IntStream.range(0, device.sections().size()).mapToObj(i -> new Place.Shaft(device, i))
                .filter(place -> place.section().distal() instanceof Contour.Round
                        && place.section().proximal() instanceof Contour.Round)
                .forEach(places::add);
        for (Lumen lumen : device.lumens()) {
            IntStream.range(0, lumen.sections().size()).mapToObj(i -> new Place.Bore(device, lumen, i))
                    .forEach(places::add);
        }
        return places;
    }

    private static RequiredAnswer answer(ProjectDevices project, RequiredRequest asked, Place place,
            List<FitCheck> checks) {
        RuleSet rules = rules(project, asked.rules());
        FitSolver solver = FitSolver.with(checks, project.catalogue().bench());
        List<Device> partners = asked.partners().stream().map(p -> project.catalogue().device(p).device()).toList();
        MatrixQuestion matrix = matrix(place, partners, rules, solver);
        List<FitQuestion> questions = IntStream.range(0, matrix.outer().size()).boxed()
                .flatMap(i -> IntStream.range(0, matrix.inner().size()).mapToObj(j -> matrix.question(i, j))).toList();
        MovableSection section = place instanceof Place.Shaft shaft ? MovableSection.of(shaft)
                : MovableSection.of((Place.Bore) place);
        List<Influence> influences = Sensitivity.of(FitMatrix.solve(matrix, Progress.SILENT), Optional.empty(),
                Progress.SILENT);
        return new RequiredAnswer(Optional.of(SizeSearch.of(section, questions, solver)), influences, "",
                Optional.of(rules));
    }

    private static MatrixQuestion matrix(Place place, List<Device> partners, RuleSet rules, FitSolver solver) {
        ReadDevice device = ReadDevice.of(place.device(), rules);
        if (place instanceof Place.Bore bore) {
            List<ReadDevice> inner = partners.stream().map(partner -> ReadDevice.of(partner, rules)).toList();
            return new MatrixQuestion(List.of(new MatrixLine(device, bore.lumen())), inner, Direction.TIP_FIRST,
                    Optional.empty(), rules, solver);
        }
        return new MatrixQuestion(partners.stream().map(partner -> line(partner, rules)).toList(), List.of(device),
                Direction.TIP_FIRST, Optional.empty(), rules, solver);
    }

    private static MatrixLine line(Device partner, RuleSet rules) {
        Lumen lumen = partner.mainLumen().orElseThrow(() -> new IllegalArgumentException(
                "Nothing can go through \"" + partner.id() + "\": it has no lumen"));
        return new MatrixLine(ReadDevice.of(partner, rules), lumen);
    }

    private static RuleSet rules(ProjectDevices project, String path) {
        return Stream.concat(Optional.ofNullable(project.rules().get(path)).stream(), project.rules().values().stream())
                .findFirst().orElseThrow(() -> new IllegalArgumentException(
                        "The project has no rule set by which labels could be read"));
    }
}
