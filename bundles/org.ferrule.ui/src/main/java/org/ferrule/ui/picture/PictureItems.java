/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.picture.Picture;

/** Lets the picture of a control leave the program: by items of a menu, and by Ctrl+C while it has the focus. */
public final class PictureItems {

    private final Control control;
    private final Supplier<Optional<SeenPicture>> seen;
    private final PictureClipboard clipboard;
    private IHandlerActivation copying;

    /** Something that is done with the picture. */
    private interface Work {

        void run(SeenPicture seen) throws IOException;
    }

    PictureItems(Menu menu, Control control, Supplier<Optional<SeenPicture>> seen) {
        this.control = control;
        this.seen = seen;
        clipboard = new PictureClipboard(control.getDisplay());
        Supplier<Boolean> shown = () -> seen.get().isPresent();
        item(menu, "&Copy Picture\tCtrl+C", shown, () -> withPicture(clipboard::copyImage));
        item(menu, "Copy as S&VG Text", shown, () -> withPicture(clipboard::copySvg));
        item(menu, "&Save Picture As...", shown, this::save);
        control.addListener(SWT.FocusIn, event -> activate());
        control.addListener(SWT.FocusOut, event -> deactivate());
        control.addListener(SWT.Dispose, event -> deactivate());
    }

    /**
     * Adds the items to the menu of a control that paints a picture itself.
     *
     * @param picture as it is to leave the program; nothing where there is none just now
     * @param owner what is known about it
     */
    public static void add(Menu menu, Control control, Supplier<Optional<Picture>> picture,
            Supplier<PictureOwner> owner) {
        new PictureItems(menu, control,
                () -> picture.get().map(shown -> new SeenPicture(shown, owner.get(), OffsetDateTime.now())));
    }

    static void item(Menu menu, String text, Supplier<Boolean> enabled, Runnable work) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> work.run()));
        menu.addListener(SWT.Show, event -> item.setEnabled(enabled.get()));
    }

    private void save() {
        withPicture(picture -> new SavePictureDialog(control.getShell(), picture).open());
    }

    private void withPicture(Work work) {
        seen.get().ifPresent(picture -> BusyIndicator.showWhile(control.getDisplay(), () -> {
            try {
                work.run(picture);
            } catch (IOException | IllegalArgumentException e) {
                StatusManager.getManager().handle(
                        Status.error("The picture could not be copied: " + e.getMessage(), e), StatusManager.SHOW);
            }
        }));
    }

    /** What else copies in the same window waits while the picture has the focus. */
    private void activate() {
        if (copying == null) {
            copying = handlers().activateHandler(IWorkbenchCommandConstants.EDIT_COPY, new AbstractHandler() {
                @Override
                public Object execute(ExecutionEvent event) {
                    withPicture(clipboard::copyImage);
                    return null;
                }
            }, new Focused(control));
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
