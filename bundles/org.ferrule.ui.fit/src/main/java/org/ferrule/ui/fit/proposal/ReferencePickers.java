/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

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
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.fit.device.Device;
import org.ferrule.model.DocumentKind;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.look.Icons;
import org.ferrule.ui.look.ModelLabels;

/** The dialogs in which documents, devices and lines of text are picked for a document. */
public final class ReferencePickers {

    private static final int PICK_CHARACTERS = 90;
    private static final int PICK_LINES = 18;

    private final LibraryDevices devices;
    private final IFile from;
    private final Shell shell;

    /** Creates pickers for a document. */
    public ReferencePickers(LibraryDevices devices, IFile from, Shell shell) {
        this.devices = devices;
        this.from = from;
        this.shell = shell;
    }

    /** Documents of a kind in the project that are not there yet, as the document refers to them. */
    public List<String> documents(DocumentKind kind, List<String> there, boolean several) {
        List<String> found = files(kind).stream().map(file -> DocumentFiles.reference(from, file))
                .filter(path -> !there.contains(path)).toList();
        return pick(found.toArray(), path -> (String) path, path -> Icons.of(kind).image(),
                ModelLabels.type(kind.type()), several).stream()
                .map(String.class::cast).toList();
    }

    private List<IFile> files(DocumentKind kind) {
        List<IFile> files = new ArrayList<>();
        try {
            from.getProject().accept((IResource resource) -> {
                if (resource instanceof IFile file
                        && DocumentFiles.kind(file.getName()).filter(kind::equals).isPresent()) {
                    files.add(file);
                }
                return true;
            });
        } catch (CoreException e) {
            ILog.of(ReferencePickers.class).log(e.getStatus());
        }
        return files;
    }

    /** Devices of the document's libraries that are not there yet; all, or some only. */
    public List<String> devices(List<String> there, Predicate<Device> only, boolean several) {
        List<CataloguedDevice> all = devices.all();
        Object[] offered = all.stream().filter(d -> only.test(d.device()))
                .filter(d -> there.stream().noneMatch(d::isCalled)).toArray();
        return pick(offered, d -> DeviceProposal.label((CataloguedDevice) d), ReferencePickers::icon, "Devices",
                several)
                .stream().map(d -> LibraryDevices.reference((CataloguedDevice) d, all)).toList();
    }

    private static Image icon(Object device) {
        String word = ((CataloguedDevice) device).device().kind().word();
        return Icons.of(org.ferrule.model.DeviceKind.get(word)).image();
    }

    /** Lines of text, typed one at a time. */
    public List<String> line(String what) {
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
        dialog.setSize(PICK_CHARACTERS, PICK_LINES);
        return dialog.open() == Window.OK ? List.of(dialog.getResult()) : List.of();
    }
}
