/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.CaseEnd;
import org.ferrule.model.ClosedDevice;
import org.ferrule.model.ClosedStep;
import org.ferrule.model.Closing;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Closing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.ClosingImpl#getClosed <em>Closed</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClosingImpl#getEnded <em>Ended</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClosingImpl#getPlan <em>Plan</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClosingImpl#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClosingImpl#getHashes <em>Hashes</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ClosingImpl extends ElementImpl implements Closing
{
	/**
	 * The default value of the '{@link #getClosed() <em>Closed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClosed()
	 * @generated
	 * @ordered
	 */
	protected static final String CLOSED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClosed() <em>Closed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClosed()
	 * @generated
	 * @ordered
	 */
	protected String closed = CLOSED_EDEFAULT;

	/**
	 * The default value of the '{@link #getEnded() <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnded()
	 * @generated
	 * @ordered
	 */
	protected static final CaseEnd ENDED_EDEFAULT = CaseEnd.CROSSED;

	/**
	 * The cached value of the '{@link #getEnded() <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnded()
	 * @generated
	 * @ordered
	 */
	protected CaseEnd ended = ENDED_EDEFAULT;

	/**
	 * This is true if the Ended attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean endedESet;

	/**
	 * The cached value of the '{@link #getPlan() <em>Plan</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlan()
	 * @generated
	 * @ordered
	 */
	protected EList<ClosedStep> plan;

	/**
	 * The cached value of the '{@link #getDevices() <em>Devices</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevices()
	 * @generated
	 * @ordered
	 */
	protected EList<ClosedDevice> devices;

	/**
	 * The cached value of the '{@link #getHashes() <em>Hashes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHashes()
	 * @generated
	 * @ordered
	 */
	protected EList<DocumentHash> hashes;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ClosingImpl()
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
		return ModelPackage.Literals.CLOSING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getClosed()
	{
		return closed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClosed(String newClosed)
	{
		String oldClosed = closed;
		closed = newClosed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLOSING__CLOSED, oldClosed, closed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CaseEnd getEnded()
	{
		return ended;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnded(CaseEnd newEnded)
	{
		CaseEnd oldEnded = ended;
		ended = newEnded == null ? ENDED_EDEFAULT : newEnded;
		boolean oldEndedESet = endedESet;
		endedESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLOSING__ENDED, oldEnded, ended, !oldEndedESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetEnded()
	{
		CaseEnd oldEnded = ended;
		boolean oldEndedESet = endedESet;
		ended = ENDED_EDEFAULT;
		endedESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.CLOSING__ENDED, oldEnded, ENDED_EDEFAULT, oldEndedESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetEnded()
	{
		return endedESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ClosedStep> getPlan()
	{
		if (plan == null)
		{
			plan = new EObjectContainmentEList<ClosedStep>(ClosedStep.class, this, ModelPackage.CLOSING__PLAN);
		}
		return plan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ClosedDevice> getDevices()
	{
		if (devices == null)
		{
			devices = new EObjectContainmentEList<ClosedDevice>(ClosedDevice.class, this, ModelPackage.CLOSING__DEVICES);
		}
		return devices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DocumentHash> getHashes()
	{
		if (hashes == null)
		{
			hashes = new EObjectContainmentEList<DocumentHash>(DocumentHash.class, this, ModelPackage.CLOSING__HASHES);
		}
		return hashes;
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
			case ModelPackage.CLOSING__PLAN:
				return ((InternalEList<?>)getPlan()).basicRemove(otherEnd, msgs);
			case ModelPackage.CLOSING__DEVICES:
				return ((InternalEList<?>)getDevices()).basicRemove(otherEnd, msgs);
			case ModelPackage.CLOSING__HASHES:
				return ((InternalEList<?>)getHashes()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.CLOSING__CLOSED:
				return getClosed();
			case ModelPackage.CLOSING__ENDED:
				return getEnded();
			case ModelPackage.CLOSING__PLAN:
				return getPlan();
			case ModelPackage.CLOSING__DEVICES:
				return getDevices();
			case ModelPackage.CLOSING__HASHES:
				return getHashes();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.CLOSING__CLOSED:
				setClosed((String)newValue);
				return;
			case ModelPackage.CLOSING__ENDED:
				setEnded((CaseEnd)newValue);
				return;
			case ModelPackage.CLOSING__PLAN:
				getPlan().clear();
				getPlan().addAll((Collection<? extends ClosedStep>)newValue);
				return;
			case ModelPackage.CLOSING__DEVICES:
				getDevices().clear();
				getDevices().addAll((Collection<? extends ClosedDevice>)newValue);
				return;
			case ModelPackage.CLOSING__HASHES:
				getHashes().clear();
				getHashes().addAll((Collection<? extends DocumentHash>)newValue);
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
			case ModelPackage.CLOSING__CLOSED:
				setClosed(CLOSED_EDEFAULT);
				return;
			case ModelPackage.CLOSING__ENDED:
				unsetEnded();
				return;
			case ModelPackage.CLOSING__PLAN:
				getPlan().clear();
				return;
			case ModelPackage.CLOSING__DEVICES:
				getDevices().clear();
				return;
			case ModelPackage.CLOSING__HASHES:
				getHashes().clear();
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
			case ModelPackage.CLOSING__CLOSED:
				return CLOSED_EDEFAULT == null ? closed != null : !CLOSED_EDEFAULT.equals(closed);
			case ModelPackage.CLOSING__ENDED:
				return isSetEnded();
			case ModelPackage.CLOSING__PLAN:
				return plan != null && !plan.isEmpty();
			case ModelPackage.CLOSING__DEVICES:
				return devices != null && !devices.isEmpty();
			case ModelPackage.CLOSING__HASHES:
				return hashes != null && !hashes.isEmpty();
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
		result.append(" (closed: ");
		result.append(closed);
		result.append(", ended: ");
		if (endedESet) result.append(ended); else result.append("<unset>");
		result.append(')');
		return result.toString();
	}

} //ClosingImpl
