/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.Placement;
import org.ferrule.model.SystemSlot;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Placement</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.PlacementImpl#getSlot <em>Slot</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PlacementImpl#getRole <em>Role</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PlacementImpl#getProtrusion <em>Protrusion</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PlacementImpl extends ElementImpl implements Placement
{
	/**
	 * The default value of the '{@link #getSlot() <em>Slot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlot()
	 * @generated
	 * @ordered
	 */
	protected static final SystemSlot SLOT_EDEFAULT = SystemSlot.GUIDE;

	/**
	 * The cached value of the '{@link #getSlot() <em>Slot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlot()
	 * @generated
	 * @ordered
	 */
	protected SystemSlot slot = SLOT_EDEFAULT;

	/**
	 * This is true if the Slot attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean slotESet;

	/**
	 * The default value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected static final String ROLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected String role = ROLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtrusion() <em>Protrusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtrusion()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension PROTRUSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtrusion() <em>Protrusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtrusion()
	 * @generated
	 * @ordered
	 */
	protected Dimension protrusion = PROTRUSION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PlacementImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.PLACEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SystemSlot getSlot()
	{
		return slot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlot(SystemSlot newSlot)
	{
		SystemSlot oldSlot = slot;
		slot = newSlot == null ? SLOT_EDEFAULT : newSlot;
		boolean oldSlotESet = slotESet;
		slotESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLACEMENT__SLOT, oldSlot, slot, !oldSlotESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetSlot()
	{
		SystemSlot oldSlot = slot;
		boolean oldSlotESet = slotESet;
		slot = SLOT_EDEFAULT;
		slotESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.PLACEMENT__SLOT, oldSlot, SLOT_EDEFAULT, oldSlotESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetSlot()
	{
		return slotESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRole()
	{
		return role;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRole(String newRole)
	{
		String oldRole = role;
		role = newRole;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLACEMENT__ROLE, oldRole, role));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getProtrusion()
	{
		return protrusion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtrusion(Dimension newProtrusion)
	{
		Dimension oldProtrusion = protrusion;
		protrusion = newProtrusion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLACEMENT__PROTRUSION, oldProtrusion, protrusion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.PLACEMENT__SLOT:
				return getSlot();
			case ModelPackage.PLACEMENT__ROLE:
				return getRole();
			case ModelPackage.PLACEMENT__PROTRUSION:
				return getProtrusion();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.PLACEMENT__SLOT:
				setSlot((SystemSlot)newValue);
				return;
			case ModelPackage.PLACEMENT__ROLE:
				setRole((String)newValue);
				return;
			case ModelPackage.PLACEMENT__PROTRUSION:
				setProtrusion((Dimension)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.PLACEMENT__SLOT:
				unsetSlot();
				return;
			case ModelPackage.PLACEMENT__ROLE:
				setRole(ROLE_EDEFAULT);
				return;
			case ModelPackage.PLACEMENT__PROTRUSION:
				setProtrusion(PROTRUSION_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.PLACEMENT__SLOT:
				return isSetSlot();
			case ModelPackage.PLACEMENT__ROLE:
				return ROLE_EDEFAULT == null ? role != null : !ROLE_EDEFAULT.equals(role);
			case ModelPackage.PLACEMENT__PROTRUSION:
				return PROTRUSION_EDEFAULT == null ? protrusion != null : !PROTRUSION_EDEFAULT.equals(protrusion);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (slot: ");
		if (slotESet) result.append(slot); else result.append("<unset>");
		result.append(", role: ");
		result.append(role);
		result.append(", protrusion: ");
		result.append(protrusion);
		result.append(')');
		return result.toString();
	}

} //PlacementImpl
