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

import org.ferrule.model.Bend;
import org.ferrule.model.Conditions;
import org.ferrule.model.Direction;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Occupant;
import org.ferrule.model.ThroughExtension;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Conditions</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.ConditionsImpl#getDirection <em>Direction</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ConditionsImpl#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ConditionsImpl#getReach <em>Reach</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ConditionsImpl#getInside <em>Inside</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ConditionsImpl#getThrough <em>Through</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ConditionsImpl#getBends <em>Bends</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ConditionsImpl#isAfterInflation <em>After Inflation</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ConditionsImpl extends ElementImpl implements Conditions
{
	/**
	 * The default value of the '{@link #getDirection() <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDirection()
	 * @generated
	 * @ordered
	 */
	protected static final Direction DIRECTION_EDEFAULT = Direction.TIP_FIRST;

	/**
	 * The cached value of the '{@link #getDirection() <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDirection()
	 * @generated
	 * @ordered
	 */
	protected Direction direction = DIRECTION_EDEFAULT;

	/**
	 * This is true if the Direction attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean directionESet;

	/**
	 * The default value of the '{@link #getWire() <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected static final String WIRE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWire() <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected String wire = WIRE_EDEFAULT;

	/**
	 * The default value of the '{@link #getReach() <em>Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReach()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension REACH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReach() <em>Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReach()
	 * @generated
	 * @ordered
	 */
	protected Dimension reach = REACH_EDEFAULT;

	/**
	 * The cached value of the '{@link #getInside() <em>Inside</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInside()
	 * @generated
	 * @ordered
	 */
	protected EList<Occupant> inside;

	/**
	 * The cached value of the '{@link #getThrough() <em>Through</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThrough()
	 * @generated
	 * @ordered
	 */
	protected ThroughExtension through;

	/**
	 * The cached value of the '{@link #getBends() <em>Bends</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBends()
	 * @generated
	 * @ordered
	 */
	protected EList<Bend> bends;

	/**
	 * The default value of the '{@link #isAfterInflation() <em>After Inflation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isAfterInflation()
	 * @generated
	 * @ordered
	 */
	protected static final boolean AFTER_INFLATION_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isAfterInflation() <em>After Inflation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isAfterInflation()
	 * @generated
	 * @ordered
	 */
	protected boolean afterInflation = AFTER_INFLATION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ConditionsImpl()
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
		return ModelPackage.Literals.CONDITIONS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Direction getDirection()
	{
		return direction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDirection(Direction newDirection)
	{
		Direction oldDirection = direction;
		direction = newDirection == null ? DIRECTION_EDEFAULT : newDirection;
		boolean oldDirectionESet = directionESet;
		directionESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CONDITIONS__DIRECTION, oldDirection, direction, !oldDirectionESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetDirection()
	{
		Direction oldDirection = direction;
		boolean oldDirectionESet = directionESet;
		direction = DIRECTION_EDEFAULT;
		directionESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.CONDITIONS__DIRECTION, oldDirection, DIRECTION_EDEFAULT, oldDirectionESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetDirection()
	{
		return directionESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWire()
	{
		return wire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWire(String newWire)
	{
		String oldWire = wire;
		wire = newWire;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CONDITIONS__WIRE, oldWire, wire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getReach()
	{
		return reach;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReach(Dimension newReach)
	{
		Dimension oldReach = reach;
		reach = newReach;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CONDITIONS__REACH, oldReach, reach));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Occupant> getInside()
	{
		if (inside == null)
		{
			inside = new EObjectContainmentEList<Occupant>(Occupant.class, this, ModelPackage.CONDITIONS__INSIDE);
		}
		return inside;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ThroughExtension getThrough()
	{
		return through;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetThrough(ThroughExtension newThrough, NotificationChain msgs)
	{
		ThroughExtension oldThrough = through;
		through = newThrough;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CONDITIONS__THROUGH, oldThrough, newThrough);
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
	public void setThrough(ThroughExtension newThrough)
	{
		if (newThrough != through)
		{
			NotificationChain msgs = null;
			if (through != null)
				msgs = ((InternalEObject)through).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CONDITIONS__THROUGH, null, msgs);
			if (newThrough != null)
				msgs = ((InternalEObject)newThrough).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CONDITIONS__THROUGH, null, msgs);
			msgs = basicSetThrough(newThrough, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CONDITIONS__THROUGH, newThrough, newThrough));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Bend> getBends()
	{
		if (bends == null)
		{
			bends = new EObjectContainmentEList<Bend>(Bend.class, this, ModelPackage.CONDITIONS__BENDS);
		}
		return bends;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isAfterInflation()
	{
		return afterInflation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAfterInflation(boolean newAfterInflation)
	{
		boolean oldAfterInflation = afterInflation;
		afterInflation = newAfterInflation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CONDITIONS__AFTER_INFLATION, oldAfterInflation, afterInflation));
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
			case ModelPackage.CONDITIONS__INSIDE:
				return ((InternalEList<?>)getInside()).basicRemove(otherEnd, msgs);
			case ModelPackage.CONDITIONS__THROUGH:
				return basicSetThrough(null, msgs);
			case ModelPackage.CONDITIONS__BENDS:
				return ((InternalEList<?>)getBends()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.CONDITIONS__DIRECTION:
				return getDirection();
			case ModelPackage.CONDITIONS__WIRE:
				return getWire();
			case ModelPackage.CONDITIONS__REACH:
				return getReach();
			case ModelPackage.CONDITIONS__INSIDE:
				return getInside();
			case ModelPackage.CONDITIONS__THROUGH:
				return getThrough();
			case ModelPackage.CONDITIONS__BENDS:
				return getBends();
			case ModelPackage.CONDITIONS__AFTER_INFLATION:
				return isAfterInflation();
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
			case ModelPackage.CONDITIONS__DIRECTION:
				setDirection((Direction)newValue);
				return;
			case ModelPackage.CONDITIONS__WIRE:
				setWire((String)newValue);
				return;
			case ModelPackage.CONDITIONS__REACH:
				setReach((Dimension)newValue);
				return;
			case ModelPackage.CONDITIONS__INSIDE:
				getInside().clear();
				getInside().addAll((Collection<? extends Occupant>)newValue);
				return;
			case ModelPackage.CONDITIONS__THROUGH:
				setThrough((ThroughExtension)newValue);
				return;
			case ModelPackage.CONDITIONS__BENDS:
				getBends().clear();
				getBends().addAll((Collection<? extends Bend>)newValue);
				return;
			case ModelPackage.CONDITIONS__AFTER_INFLATION:
				setAfterInflation((Boolean)newValue);
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
			case ModelPackage.CONDITIONS__DIRECTION:
				unsetDirection();
				return;
			case ModelPackage.CONDITIONS__WIRE:
				setWire(WIRE_EDEFAULT);
				return;
			case ModelPackage.CONDITIONS__REACH:
				setReach(REACH_EDEFAULT);
				return;
			case ModelPackage.CONDITIONS__INSIDE:
				getInside().clear();
				return;
			case ModelPackage.CONDITIONS__THROUGH:
				setThrough((ThroughExtension)null);
				return;
			case ModelPackage.CONDITIONS__BENDS:
				getBends().clear();
				return;
			case ModelPackage.CONDITIONS__AFTER_INFLATION:
				setAfterInflation(AFTER_INFLATION_EDEFAULT);
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
			case ModelPackage.CONDITIONS__DIRECTION:
				return isSetDirection();
			case ModelPackage.CONDITIONS__WIRE:
				return WIRE_EDEFAULT == null ? wire != null : !WIRE_EDEFAULT.equals(wire);
			case ModelPackage.CONDITIONS__REACH:
				return REACH_EDEFAULT == null ? reach != null : !REACH_EDEFAULT.equals(reach);
			case ModelPackage.CONDITIONS__INSIDE:
				return inside != null && !inside.isEmpty();
			case ModelPackage.CONDITIONS__THROUGH:
				return through != null;
			case ModelPackage.CONDITIONS__BENDS:
				return bends != null && !bends.isEmpty();
			case ModelPackage.CONDITIONS__AFTER_INFLATION:
				return afterInflation != AFTER_INFLATION_EDEFAULT;
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
		result.append(" (direction: ");
		if (directionESet) result.append(direction); else result.append("<unset>");
		result.append(", wire: ");
		result.append(wire);
		result.append(", reach: ");
		result.append(reach);
		result.append(", afterInflation: ");
		result.append(afterInflation);
		result.append(')');
		return result.toString();
	}

} //ConditionsImpl
