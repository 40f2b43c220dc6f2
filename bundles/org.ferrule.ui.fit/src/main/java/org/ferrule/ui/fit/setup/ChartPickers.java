/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.FitChart;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.fit.chart.LiveAnswers;
import org.ferrule.ui.look.Icons;

/** The dialogs in which documents, devices and lines of text are picked for a chart. */
final class ChartPickers {

    private final LiveAnswers answers;
    private final IFile chart;
    private final Shell shell;

    ChartPickers(LiveAnswers answers, IFile chart, Shell shell) {
        this.answers = answers;
        this.chart = chart;
        this.shell = shell;
    }

    /** Documents of a kind in the project that are not there yet, as the chart refers to them. */
    List<String> documents(DocumentKind kind, List<String> there, boolean several) {
        List<String> found = files(kind).stream().map(file -> DocumentFiles.reference(chart, file))
                .filter(path -> !there.contains(path)).toList();
        return pick(found.toArray(), path -> (String) path, path -> Icons.of(kind).image(),
                kind == DocumentKind.RULES ? "Rule set" : "Device libraries", several).stream()
                .map(String.class::cast).toList();
    }

    private List<IFile> files(DocumentKind kind) {
        List<IFile> files = new ArrayList<>();
        try {
            chart.getProject().accept((IResource resource) -> {
                if (resource instanceof IFile file
                        && DocumentFiles.kind(file.getName()).filter(kind::equals).isPresent()) {
                    files.add(file);
                }
                return true;
            });
        } catch (CoreException e) {
            ILog.of(ChartPickers.class).log(e.getStatus());
        }
        return files;
    }

    /** Devices of the chart's libraries that are not there yet; all kinds, or one only. */
    List<String> devices(List<String> there, DeviceKind only, boolean several) {
        Object[] offered = catalogue().devices().stream().filter(d -> only == null || d.device().kind() == only)
                .filter(d -> there.stream().noneMatch(d::isCalled)).toArray();
        return pick(offered, d -> label((CataloguedDevice) d), ChartPickers::icon, "Devices", several).stream()
                .map(d -> reference((CataloguedDevice) d)).toList();
    }

    private Catalogue catalogue() {
        List<LibraryReader> readers = answers.chart().map(FitChart::getLibraries).map(List::copyOf).orElse(List.of())
                .stream().flatMap(path -> answers.documents().library(path).stream()
                        .map(library -> new LibraryReader(path, library)))
                .toList();
        return Catalogue.of(readers);
    }

    /** An id alone, unless two libraries share it. */
    private String reference(CataloguedDevice device) {
        long bearers = catalogue().devices().stream().filter(d -> d.device().id().equals(device.device().id())).count();
        return bearers == 1 ? device.device().id() : device.library() + "!" + device.device().id();
    }

    private static String label(CataloguedDevice device) {
        return Stream.of(device.device().name(), device.device().kind().word(), device.device().size(),
                device.device().id()).filter(text -> !text.isEmpty()).reduce((a, b) -> a + "  \u2013  " + b).orElse("");
    }

    private static Image icon(Object device) {
        String word = ((CataloguedDevice) device).device().kind().word();
        return Icons.of(org.ferrule.model.DeviceKind.get(word)).image();
    }

    /** Lines of text, typed one at a time. */
    List<String> line(String what) {
        InputDialog dialog = new InputDialog(shell, what, what + ":", "", text -> text.isBlank() ? "" : null);
        return dialog.open() == Window.OK ? List.of(dialog.getValue().trim()) : List.of();
    }

    /** Finds words of an element. */
    @FunctionalInterface
    private interface Words {
        String of(Object element);
    }

    /** Finds the image of an element. */
    @FunctionalInterface
    private interface Images {
        Image of(Object element);
    }

    private List<Object> pick(Object[] offered, Words words, Images images, String title, boolean several) {
        ElementListSelectionDialog dialog = new ElementListSelectionDialog(shell, new LabelProvider() {
            @Override
            public String getText(Object element) {
                return words.of(element);
            }

            @Override
            public Image getImage(Object element) {
                return images.of(element);
            }
        });
        dialog.setTitle(title);
        dialog.setMessage("Type a part of the name; * stands for any letters:");
        dialog.setMultipleSelection(several);
        dialog.setElements(offered);
        return dialog.open() == Window.OK ? List.of(dialog.getResult()) : List.of();
    }
}
