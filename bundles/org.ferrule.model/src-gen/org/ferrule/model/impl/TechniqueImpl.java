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

import org.eclipse.emf.ecore.util.EDataTypeEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.Advised;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.PlannedTry;
import org.ferrule.model.Published;
import org.ferrule.model.Technique;
import org.ferrule.model.TechniqueAxis;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Technique</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.TechniqueImpl#getChanges <em>Changes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueImpl#getCautions <em>Cautions</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueImpl#getOffLabel <em>Off Label</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueImpl#getStop <em>Stop</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueImpl#getPublished <em>Published</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueImpl#getAxis <em>Axis</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueImpl#getAfter <em>After</em>}</li>
 *   <li>{@link org.ferrule.model.impl.TechniqueImpl#getTries <em>Tries</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TechniqueImpl extends MoveImpl implements Technique
{
	/**
	 * The cached value of the '{@link #getChanges() <em>Changes</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChanges()
	 * @generated
	 * @ordered
	 */
	protected EList<String> changes;

	/**
	 * The cached value of the '{@link #getCautions() <em>Cautions</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCautions()
	 * @generated
	 * @ordered
	 */
	protected EList<String> cautions;

	/**
	 * The default value of the '{@link #getOffLabel() <em>Off Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffLabel()
	 * @generated
	 * @ordered
	 */
	protected static final String OFF_LABEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOffLabel() <em>Off Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffLabel()
	 * @generated
	 * @ordered
	 */
	protected String offLabel = OFF_LABEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getStop() <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStop()
	 * @generated
	 * @ordered
	 */
	protected static final String STOP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStop() <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStop()
	 * @generated
	 * @ordered
	 */
	protected String stop = STOP_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPublished() <em>Published</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPublished()
	 * @generated
	 * @ordered
	 */
	protected EList<Published> published;

	/**
	 * The default value of the '{@link #getAxis() <em>Axis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAxis()
	 * @generated
	 * @ordered
	 */
	protected static final TechniqueAxis AXIS_EDEFAULT = TechniqueAxis.LOOK_FIRST;

	/**
	 * The cached value of the '{@link #getAxis() <em>Axis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAxis()
	 * @generated
	 * @ordered
	 */
	protected TechniqueAxis axis = AXIS_EDEFAULT;

	/**
	 * This is true if the Axis attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean axisESet;

	/**
	 * The cached value of the '{@link #getAfter() <em>After</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAfter()
	 * @generated
	 * @ordered
	 */
	protected EList<String> after;

	/**
	 * The cached value of the '{@link #getTries() <em>Tries</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTries()
	 * @generated
	 * @ordered
	 */
	protected EList<PlannedTry> tries;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TechniqueImpl()
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
		return ModelPackage.Literals.TECHNIQUE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getChanges()
	{
		if (changes == null)
		{
			changes = new EDataTypeEList<String>(String.class, this, ModelPackage.TECHNIQUE__CHANGES);
		}
		return changes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getCautions()
	{
		if (cautions == null)
		{
			cautions = new EDataTypeEList<String>(String.class, this, ModelPackage.TECHNIQUE__CAUTIONS);
		}
		return cautions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOffLabel()
	{
		return offLabel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffLabel(String newOffLabel)
	{
		String oldOffLabel = offLabel;
		offLabel = newOffLabel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TECHNIQUE__OFF_LABEL, oldOffLabel, offLabel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStop()
	{
		return stop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStop(String newStop)
	{
		String oldStop = stop;
		stop = newStop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TECHNIQUE__STOP, oldStop, stop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Published> getPublished()
	{
		if (published == null)
		{
			published = new EObjectContainmentEList<Published>(Published.class, this, ModelPackage.TECHNIQUE__PUBLISHED);
		}
		return published;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TechniqueAxis getAxis()
	{
		return axis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAxis(TechniqueAxis newAxis)
	{
		TechniqueAxis oldAxis = axis;
		axis = newAxis == null ? AXIS_EDEFAULT : newAxis;
		boolean oldAxisESet = axisESet;
		axisESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TECHNIQUE__AXIS, oldAxis, axis, !oldAxisESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetAxis()
	{
		TechniqueAxis oldAxis = axis;
		boolean oldAxisESet = axisESet;
		axis = AXIS_EDEFAULT;
		axisESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.TECHNIQUE__AXIS, oldAxis, AXIS_EDEFAULT, oldAxisESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetAxis()
	{
		return axisESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getAfter()
	{
		if (after == null)
		{
			after = new EDataTypeEList<String>(String.class, this, ModelPackage.TECHNIQUE__AFTER);
		}
		return after;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PlannedTry> getTries()
	{
		if (tries == null)
		{
			tries = new EObjectContainmentEList<PlannedTry>(PlannedTry.class, this, ModelPackage.TECHNIQUE__TRIES);
		}
		return tries;
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
			case ModelPackage.TECHNIQUE__PUBLISHED:
				return ((InternalEList<?>)getPublished()).basicRemove(otherEnd, msgs);
			case ModelPackage.TECHNIQUE__TRIES:
				return ((InternalEList<?>)getTries()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.TECHNIQUE__CHANGES:
				return getChanges();
			case ModelPackage.TECHNIQUE__CAUTIONS:
				return getCautions();
			case ModelPackage.TECHNIQUE__OFF_LABEL:
				return getOffLabel();
			case ModelPackage.TECHNIQUE__STOP:
				return getStop();
			case ModelPackage.TECHNIQUE__PUBLISHED:
				return getPublished();
			case ModelPackage.TECHNIQUE__AXIS:
				return getAxis();
			case ModelPackage.TECHNIQUE__AFTER:
				return getAfter();
			case ModelPackage.TECHNIQUE__TRIES:
				return getTries();
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
			case ModelPackage.TECHNIQUE__CHANGES:
				getChanges().clear();
				getChanges().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.TECHNIQUE__CAUTIONS:
				getCautions().clear();
				getCautions().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.TECHNIQUE__OFF_LABEL:
				setOffLabel((String)newValue);
				return;
			case ModelPackage.TECHNIQUE__STOP:
				setStop((String)newValue);
				return;
			case ModelPackage.TECHNIQUE__PUBLISHED:
				getPublished().clear();
				getPublished().addAll((Collection<? extends Published>)newValue);
				return;
			case ModelPackage.TECHNIQUE__AXIS:
				setAxis((TechniqueAxis)newValue);
				return;
			case ModelPackage.TECHNIQUE__AFTER:
				getAfter().clear();
				getAfter().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.TECHNIQUE__TRIES:
				getTries().clear();
				getTries().addAll((Collection<? extends PlannedTry>)newValue);
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
			case ModelPackage.TECHNIQUE__CHANGES:
				getChanges().clear();
				return;
			case ModelPackage.TECHNIQUE__CAUTIONS:
				getCautions().clear();
				return;
			case ModelPackage.TECHNIQUE__OFF_LABEL:
				setOffLabel(OFF_LABEL_EDEFAULT);
				return;
			case ModelPackage.TECHNIQUE__STOP:
				setStop(STOP_EDEFAULT);
				return;
			case ModelPackage.TECHNIQUE__PUBLISHED:
				getPublished().clear();
				return;
			case ModelPackage.TECHNIQUE__AXIS:
				unsetAxis();
				return;
			case ModelPackage.TECHNIQUE__AFTER:
				getAfter().clear();
				return;
			case ModelPackage.TECHNIQUE__TRIES:
				getTries().clear();
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
			case ModelPackage.TECHNIQUE__CHANGES:
				return changes != null && !changes.isEmpty();
			case ModelPackage.TECHNIQUE__CAUTIONS:
				return cautions != null && !cautions.isEmpty();
			case ModelPackage.TECHNIQUE__OFF_LABEL:
				return OFF_LABEL_EDEFAULT == null ? offLabel != null : !OFF_LABEL_EDEFAULT.equals(offLabel);
			case ModelPackage.TECHNIQUE__STOP:
				return STOP_EDEFAULT == null ? stop != null : !STOP_EDEFAULT.equals(stop);
			case ModelPackage.TECHNIQUE__PUBLISHED:
				return published != null && !published.isEmpty();
			case ModelPackage.TECHNIQUE__AXIS:
				return isSetAxis();
			case ModelPackage.TECHNIQUE__AFTER:
				return after != null && !after.isEmpty();
			case ModelPackage.TECHNIQUE__TRIES:
				return tries != null && !tries.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eBaseStructuralFeatureID(int derivedFeatureID, Class<?> baseClass)
	{
		if (baseClass == Advised.class)
		{
			switch (derivedFeatureID)
			{
				case ModelPackage.TECHNIQUE__CHANGES: return ModelPackage.ADVISED__CHANGES;
				case ModelPackage.TECHNIQUE__CAUTIONS: return ModelPackage.ADVISED__CAUTIONS;
				case ModelPackage.TECHNIQUE__OFF_LABEL: return ModelPackage.ADVISED__OFF_LABEL;
				case ModelPackage.TECHNIQUE__STOP: return ModelPackage.ADVISED__STOP;
				case ModelPackage.TECHNIQUE__PUBLISHED: return ModelPackage.ADVISED__PUBLISHED;
				default: return -1;
			}
		}
		return super.eBaseStructuralFeatureID(derivedFeatureID, baseClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eDerivedStructuralFeatureID(int baseFeatureID, Class<?> baseClass)
	{
		if (baseClass == Advised.class)
		{
			switch (baseFeatureID)
			{
				case ModelPackage.ADVISED__CHANGES: return ModelPackage.TECHNIQUE__CHANGES;
				case ModelPackage.ADVISED__CAUTIONS: return ModelPackage.TECHNIQUE__CAUTIONS;
				case ModelPackage.ADVISED__OFF_LABEL: return ModelPackage.TECHNIQUE__OFF_LABEL;
				case ModelPackage.ADVISED__STOP: return ModelPackage.TECHNIQUE__STOP;
				case ModelPackage.ADVISED__PUBLISHED: return ModelPackage.TECHNIQUE__PUBLISHED;
				default: return -1;
			}
		}
		return super.eDerivedStructuralFeatureID(baseFeatureID, baseClass);
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
		result.append(" (changes: ");
		result.append(changes);
		result.append(", cautions: ");
		result.append(cautions);
		result.append(", offLabel: ");
		result.append(offLabel);
		result.append(", stop: ");
		result.append(stop);
		result.append(", axis: ");
		if (axisESet) result.append(axis); else result.append("<unset>");
		result.append(", after: ");
		result.append(after);
		result.append(')');
		return result.toString();
	}

} //TechniqueImpl
