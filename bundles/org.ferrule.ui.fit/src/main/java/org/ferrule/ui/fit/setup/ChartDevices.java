/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.setup;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.IContentProposalProvider;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.fit.device.Device;
import org.ferrule.model.FitChart;
import org.ferrule.ui.fit.chart.LiveAnswers;
import org.ferrule.ui.fit.proposal.DeviceProposal;

/** The devices that a chart may refer to, as they stand now, and how it refers to them. */
final class ChartDevices {

    private final LiveAnswers answers;

    ChartDevices(LiveAnswers answers) {
        this.answers = answers;
    }

    List<CataloguedDevice> all() {
        List<String> paths = answers.chart().map(FitChart::getLibraries).map(List::copyOf).orElse(List.of());
        return Catalogue.of(paths.stream().flatMap(path -> answers.documents().library(path).stream()
                .map(library -> new LibraryReader(path, library))).toList()).devices();
    }

    /** An id alone, unless two libraries share it. */
    static String reference(CataloguedDevice device, List<CataloguedDevice> all) {
        long bearers = all.stream().filter(d -> d.device().id().equals(device.device().id())).count();
        return bearers == 1 ? device.device().id() : device.library() + "!" + device.device().id();
    }

    /** Proposes references; a text that is a reference already is no reason to offer only that one. */
    IContentProposalProvider proposals(Predicate<Device> offered) {
        Supplier<List<CataloguedDevice>> devices = this::all;
        return (typed, position) -> {
            List<CataloguedDevice> all = devices.get();
            boolean complete = all.stream().anyMatch(device -> device.isCalled(typed.strip()));
            return all.stream().filter(device -> offered.test(device.device()))
                    .filter(device -> complete || DeviceProposal.matches(device, typed))
                    .map(device -> DeviceProposal.referred(device, reference(device, all)))
                    .toArray(IContentProposal[]::new);
        };
    }
}
