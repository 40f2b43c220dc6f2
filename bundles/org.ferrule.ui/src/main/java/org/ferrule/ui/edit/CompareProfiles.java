/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.action.Action;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.ui.document.DeviceReference;

/** Adds the devices that are chosen somewhere to those whose profiles are compared. */
public final class CompareProfiles extends Action {

    /** The command that does it, wherever it is defined. */
    public static final String COMMAND = "org.ferrule.ui.profile.compare";

    /** Its parameter: full paths of libraries and ids with exclamation marks between, a device to a line. */
    public static final String DEVICES = "org.ferrule.ui.profile.devices";

    private final Supplier<List<DeviceReference>> devices;

    /** Creates the action. */
    public CompareProfiles(Supplier<List<DeviceReference>> devices) {
        super("&Compare profiles");
        this.devices = devices;
        setToolTipText("Show these devices over each other along their length");
    }

    @Override
    public boolean isEnabled() {
        return !devices.get().isEmpty();
    }

    @Override
    public void run() {
        Command command = PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(COMMAND);
        String text = devices.get().stream().map(device -> device.library().getFullPath() + "!" + device.id())
                .collect(Collectors.joining("\n"));
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(
                    ParameterizedCommand.generateCommand(command, Map.of(DEVICES, text)), null);
        } catch (CommandException e) {
            StatusManager.getManager().handle(Status.error(e.getMessage(), e), StatusManager.SHOW);
        }
    }
}
