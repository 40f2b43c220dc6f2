/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.SystemInPlace;
import org.ferrule.model.ThroughExtension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>System In Place</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.SystemInPlaceImpl#getSheath <em>Sheath</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SystemInPlaceImpl#getValve <em>Valve</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SystemInPlaceImpl#getGuide <em>Guide</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SystemInPlaceImpl#getExtension <em>Extension</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SystemInPlaceImpl#getMicrocatheter <em>Microcatheter</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SystemInPlaceImpl#getMainWire <em>Main Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SystemInPlaceImpl#getSecondWire <em>Second Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SystemInPlaceImpl#getAnchor <em>Anchor</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SystemInPlaceImpl extends ElementImpl implements SystemInPlace
{
	/**
	 * The default value of the '{@link #getSheath() <em>Sheath</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheath()
	 * @generated
	 * @ordered
	 */
	protected static final String SHEATH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheath() <em>Sheath</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheath()
	 * @generated
	 * @ordered
	 */
	protected String sheath = SHEATH_EDEFAULT;

	/**
	 * The default value of the '{@link #getValve() <em>Valve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValve()
	 * @generated
	 * @ordered
	 */
	protected static final String VALVE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValve() <em>Valve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValve()
	 * @generated
	 * @ordered
	 */
	protected String valve = VALVE_EDEFAULT;

	/**
	 * The default value of the '{@link #getGuide() <em>Guide</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGuide()
	 * @generated
	 * @ordered
	 */
	protected static final String GUIDE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGuide() <em>Guide</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGuide()
	 * @generated
	 * @ordered
	 */
	protected String guide = GUIDE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getExtension() <em>Extension</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtension()
	 * @generated
	 * @ordered
	 */
	protected ThroughExtension extension;

	/**
	 * The default value of the '{@link #getMicrocatheter() <em>Microcatheter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMicrocatheter()
	 * @generated
	 * @ordered
	 */
	protected static final String MICROCATHETER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMicrocatheter() <em>Microcatheter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMicrocatheter()
	 * @generated
	 * @ordered
	 */
	protected String microcatheter = MICROCATHETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getMainWire() <em>Main Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMainWire()
	 * @generated
	 * @ordered
	 */
	protected static final String MAIN_WIRE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMainWire() <em>Main Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMainWire()
	 * @generated
	 * @ordered
	 */
	protected String mainWire = MAIN_WIRE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSecondWire() <em>Second Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondWire()
	 * @generated
	 * @ordered
	 */
	protected static final String SECOND_WIRE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSecondWire() <em>Second Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondWire()
	 * @generated
	 * @ordered
	 */
	protected String secondWire = SECOND_WIRE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAnchor() <em>Anchor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnchor()
	 * @generated
	 * @ordered
	 */
	protected static final String ANCHOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAnchor() <em>Anchor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnchor()
	 * @generated
	 * @ordered
	 */
	protected String anchor = ANCHOR_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SystemInPlaceImpl()
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
		return ModelPackage.Literals.SYSTEM_IN_PLACE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSheath()
	{
		return sheath;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheath(String newSheath)
	{
		String oldSheath = sheath;
		sheath = newSheath;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__SHEATH, oldSheath, sheath));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getValve()
	{
		return valve;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValve(String newValve)
	{
		String oldValve = valve;
		valve = newValve;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__VALVE, oldValve, valve));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getGuide()
	{
		return guide;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGuide(String newGuide)
	{
		String oldGuide = guide;
		guide = newGuide;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__GUIDE, oldGuide, guide));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ThroughExtension getExtension()
	{
		return extension;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetExtension(ThroughExtension newExtension, NotificationChain msgs)
	{
		ThroughExtension oldExtension = extension;
		extension = newExtension;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__EXTENSION, oldExtension, newExtension);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExtension(ThroughExtension newExtension)
	{
		if (newExtension != extension)
		{
			NotificationChain msgs = null;
			if (extension != null)
				msgs = ((InternalEObject)extension).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SYSTEM_IN_PLACE__EXTENSION, null, msgs);
			if (newExtension != null)
				msgs = ((InternalEObject)newExtension).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SYSTEM_IN_PLACE__EXTENSION, null, msgs);
			msgs = basicSetExtension(newExtension, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__EXTENSION, newExtension, newExtension));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMicrocatheter()
	{
		return microcatheter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMicrocatheter(String newMicrocatheter)
	{
		String oldMicrocatheter = microcatheter;
		microcatheter = newMicrocatheter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__MICROCATHETER, oldMicrocatheter, microcatheter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMainWire()
	{
		return mainWire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMainWire(String newMainWire)
	{
		String oldMainWire = mainWire;
		mainWire = newMainWire;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__MAIN_WIRE, oldMainWire, mainWire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSecondWire()
	{
		return secondWire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSecondWire(String newSecondWire)
	{
		String oldSecondWire = secondWire;
		secondWire = newSecondWire;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__SECOND_WIRE, oldSecondWire, secondWire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAnchor()
	{
		return anchor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnchor(String newAnchor)
	{
		String oldAnchor = anchor;
		anchor = newAnchor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SYSTEM_IN_PLACE__ANCHOR, oldAnchor, anchor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.SYSTEM_IN_PLACE__EXTENSION:
				return basicSetExtension(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
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
			case ModelPackage.SYSTEM_IN_PLACE__SHEATH:
				return getSheath();
			case ModelPackage.SYSTEM_IN_PLACE__VALVE:
				return getValve();
			case ModelPackage.SYSTEM_IN_PLACE__GUIDE:
				return getGuide();
			case ModelPackage.SYSTEM_IN_PLACE__EXTENSION:
				return getExtension();
			case ModelPackage.SYSTEM_IN_PLACE__MICROCATHETER:
				return getMicrocatheter();
			case ModelPackage.SYSTEM_IN_PLACE__MAIN_WIRE:
				return getMainWire();
			case ModelPackage.SYSTEM_IN_PLACE__SECOND_WIRE:
				return getSecondWire();
			case ModelPackage.SYSTEM_IN_PLACE__ANCHOR:
				return getAnchor();
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
			case ModelPackage.SYSTEM_IN_PLACE__SHEATH:
				setSheath((String)newValue);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__VALVE:
				setValve((String)newValue);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__GUIDE:
				setGuide((String)newValue);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__EXTENSION:
				setExtension((ThroughExtension)newValue);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__MICROCATHETER:
				setMicrocatheter((String)newValue);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__MAIN_WIRE:
				setMainWire((String)newValue);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__SECOND_WIRE:
				setSecondWire((String)newValue);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__ANCHOR:
				setAnchor((String)newValue);
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
			case ModelPackage.SYSTEM_IN_PLACE__SHEATH:
				setSheath(SHEATH_EDEFAULT);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__VALVE:
				setValve(VALVE_EDEFAULT);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__GUIDE:
				setGuide(GUIDE_EDEFAULT);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__EXTENSION:
				setExtension((ThroughExtension)null);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__MICROCATHETER:
				setMicrocatheter(MICROCATHETER_EDEFAULT);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__MAIN_WIRE:
				setMainWire(MAIN_WIRE_EDEFAULT);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__SECOND_WIRE:
				setSecondWire(SECOND_WIRE_EDEFAULT);
				return;
			case ModelPackage.SYSTEM_IN_PLACE__ANCHOR:
				setAnchor(ANCHOR_EDEFAULT);
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
			case ModelPackage.SYSTEM_IN_PLACE__SHEATH:
				return SHEATH_EDEFAULT == null ? sheath != null : !SHEATH_EDEFAULT.equals(sheath);
			case ModelPackage.SYSTEM_IN_PLACE__VALVE:
				return VALVE_EDEFAULT == null ? valve != null : !VALVE_EDEFAULT.equals(valve);
			case ModelPackage.SYSTEM_IN_PLACE__GUIDE:
				return GUIDE_EDEFAULT == null ? guide != null : !GUIDE_EDEFAULT.equals(guide);
			case ModelPackage.SYSTEM_IN_PLACE__EXTENSION:
				return extension != null;
			case ModelPackage.SYSTEM_IN_PLACE__MICROCATHETER:
				return MICROCATHETER_EDEFAULT == null ? microcatheter != null : !MICROCATHETER_EDEFAULT.equals(microcatheter);
			case ModelPackage.SYSTEM_IN_PLACE__MAIN_WIRE:
				return MAIN_WIRE_EDEFAULT == null ? mainWire != null : !MAIN_WIRE_EDEFAULT.equals(mainWire);
			case ModelPackage.SYSTEM_IN_PLACE__SECOND_WIRE:
				return SECOND_WIRE_EDEFAULT == null ? secondWire != null : !SECOND_WIRE_EDEFAULT.equals(secondWire);
			case ModelPackage.SYSTEM_IN_PLACE__ANCHOR:
				return ANCHOR_EDEFAULT == null ? anchor != null : !ANCHOR_EDEFAULT.equals(anchor);
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
		result.append(" (sheath: ");
		result.append(sheath);
		result.append(", valve: ");
		result.append(valve);
		result.append(", guide: ");
		result.append(guide);
		result.append(", microcatheter: ");
		result.append(microcatheter);
		result.append(", mainWire: ");
		result.append(mainWire);
		result.append(", secondWire: ");
		result.append(secondWire);
		result.append(", anchor: ");
		result.append(anchor);
		result.append(')');
		return result.toString();
	}

} //SystemInPlaceImpl
