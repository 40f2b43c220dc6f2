/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.io.IOException;
import java.util.function.Supplier;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.statushandlers.StatusManager;

/** The menu of a canvas, and Ctrl+C while the canvas has the focus: copying, saving and zooming. */
final class PictureMenu {

    private final PictureCanvas canvas;
    private IHandlerActivation copying;

    /** Something that is done with the picture. */
    private interface Work {

        void run(SeenPicture seen) throws IOException;
    }

    PictureMenu(PictureCanvas canvas, PictureKeys keys) {
        this.canvas = canvas;
        Menu menu = new Menu(canvas);
        PictureClipboard clipboard = new PictureClipboard(canvas.getDisplay());
        Supplier<Boolean> shown = () -> canvas.picture().isPresent();
        item(menu, "&Copy Picture\tCtrl+C", shown, () -> withPicture(clipboard::copyImage));
        item(menu, "Copy as S&VG Text", shown, () -> withPicture(clipboard::copySvg));
        item(menu, "&Save Picture As...", shown, this::save);
        new MenuItem(menu, SWT.SEPARATOR);
        item(menu, "Zoom &In\t+", shown, () -> keys.zoom(PictureKeys.FACTOR));
        item(menu, "Zoom &Out\t-", () -> canvas.zoom().isZoomed(), () -> keys.zoom(1 / PictureKeys.FACTOR));
        item(menu, "&Fit All\t0", () -> canvas.zoom().isZoomed(), () -> canvas.zoom().fitAll());
        canvas.setMenu(menu);
        canvas.addListener(SWT.FocusIn, event -> activate(clipboard));
        canvas.addListener(SWT.FocusOut, event -> deactivate());
        canvas.addListener(SWT.Dispose, event -> deactivate());
    }

    private static void item(Menu menu, String text, Supplier<Boolean> enabled, Runnable work) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        menu.addListener(SWT.Show, event -> item.setEnabled(enabled.get()));
    }

    private void save() {
        withPicture(seen -> new SavePictureDialog(canvas.getShell(), seen).open());
    }

    private void withPicture(Work work) {
        canvas.seen().ifPresent(seen -> BusyIndicator.showWhile(canvas.getDisplay(), () -> {
            try {
                work.run(seen);
            } catch (IOException | IllegalArgumentException e) {
                StatusManager.getManager().handle(
                        Status.error("The picture could not be copied: " + e.getMessage(), e), StatusManager.SHOW);
            }
        }));
    }

    /** What else copies in the same window waits while the picture has the focus. */
    private void activate(PictureClipboard clipboard) {
        if (copying == null) {
            copying = handlers().activateHandler(IWorkbenchCommandConstants.EDIT_COPY, new AbstractHandler() {
                @Override
                public Object execute(ExecutionEvent event) {
                    withPicture(clipboard::copyImage);
                    return null;
                }
            }, new Focused(canvas));
        }
    }

    private void deactivate() {
        if (copying != null) {
            handlers().deactivateHandler(copying);
            copying = null;
        }
    }

    private static IHandlerService handlers() {
        return PlatformUI.getWorkbench().getService(IHandlerService.class);
    }
}
