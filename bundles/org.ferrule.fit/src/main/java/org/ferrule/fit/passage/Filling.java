/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * What fills a lumen somewhere on the way while a device passes, at the centres of all figures.
 *
 * @param lumenSection name of the lumen's section
 * @param lumen its diameter there
 * @param devices diameters of what lies there, wires included, largest first; an oval counts as round
 * @param round whether all of them are round
 */
public record Filling(String lumenSection, Length lumen, List<Length> devices, boolean round) {

    public Filling {
        Objects.requireNonNull(lumenSection, "lumenSection");
        Objects.requireNonNull(lumen, "lumen");
        devices = devices.stream().sorted(Comparator.reverseOrder()).toList();
    }

    /**
     * What fills the lumen on a way tip first: only what nothing else surpasses, with more or thicker devices in a lumen
     * that is no wider. Nothing where a figure is unknown.
     */
    public static List<Filling> worst(FitQuestion question, Phase phase) {
        List<Filling> worst = new ArrayList<>();
        boolean used = phase == Phase.OUT || question.conditions().afterInflation();
        for (Place place : Way.of(question, phase)) {
            for (Stretch device : question.inner().outline(used ? Phase.OUT : Phase.IN)) {
                boolean meet = place.bore().from().plus(device.from()).compareTo(question.leastTravel()) < 0;
                Optional<Filling> filling = of(place, device);
                if (meet && filling.isEmpty()) {
                    return List.of();
                }
                filling.filter(f -> meet).ifPresent(f -> add(worst, f));
            }
        }
        return worst;
    }

    private static void add(List<Filling> worst, Filling filling) {
        if (worst.stream().noneMatch(other -> other.surpasses(filling))) {
            worst.removeIf(filling::surpasses);
            worst.add(filling);
        }
    }

    private boolean surpasses(Filling other) {
        boolean noWider = lumen.compareTo(other.lumen) <= 0 && devices.size() >= other.devices.size();
        for (int i = 0; noWider && i < other.devices.size(); i++) {
            noWider = devices.get(i).compareTo(other.devices.get(i)) >= 0;
        }
        return noWider;
    }

    private static Optional<Filling> of(Place place, Stretch device) {
        if (place.bore().diameter().isEmpty() || device.shape().isEmpty() || place.hasUnknown()) {
            return Optional.empty();
        }
        List<Profile> profiles = new ArrayList<>(widest(device.shape().get()));
        place.beside().forEach(n -> profiles.addAll(widest(n.outline().shape().orElseThrow())));
        List<Length> devices = profiles.stream().flatMap(p -> discs(p).stream()).toList();
        return Optional.of(new Filling(place.bore().name(), place.bore().diameter().get().smallest().centre(), devices,
                profiles.stream().allMatch(Profile::isRound)));
    }

    private static List<Profile> widest(Shape shape) {
        return shape.widest(shape.from(), shape.to());
    }

    private static List<Length> discs(Profile profile) {
        List<Length> centres = profile.figures().stream().map(Figure::centre).toList();
        return profile.contour() instanceof Contour.Oval ? List.of(centres.get(0).max(centres.get(1))) : centres;
    }
}
