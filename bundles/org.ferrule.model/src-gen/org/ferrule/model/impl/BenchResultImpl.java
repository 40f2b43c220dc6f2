/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

import org.ferrule.model.BenchOutcome;
import org.ferrule.model.BenchResult;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Phase;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Bench Result</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.BenchResultImpl#getOuter <em>Outer</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BenchResultImpl#getLumen <em>Lumen</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BenchResultImpl#getInner <em>Inner</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BenchResultImpl#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BenchResultImpl#getResult <em>Result</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BenchResultImpl#getCovers <em>Covers</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BenchResultImpl#getSamples <em>Samples</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BenchResultImpl extends SourcedImpl implements BenchResult
{
	/**
	 * The default value of the '{@link #getOuter() <em>Outer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOuter()
	 * @generated
	 * @ordered
	 */
	protected static final String OUTER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOuter() <em>Outer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOuter()
	 * @generated
	 * @ordered
	 */
	protected String outer = OUTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getLumen() <em>Lumen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLumen()
	 * @generated
	 * @ordered
	 */
	protected static final String LUMEN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLumen() <em>Lumen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLumen()
	 * @generated
	 * @ordered
	 */
	protected String lumen = LUMEN_EDEFAULT;

	/**
	 * The default value of the '{@link #getInner() <em>Inner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInner()
	 * @generated
	 * @ordered
	 */
	protected static final String INNER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInner() <em>Inner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInner()
	 * @generated
	 * @ordered
	 */
	protected String inner = INNER_EDEFAULT;

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
	 * The default value of the '{@link #getResult() <em>Result</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResult()
	 * @generated
	 * @ordered
	 */
	protected static final BenchOutcome RESULT_EDEFAULT = BenchOutcome.PASSED;

	/**
	 * The cached value of the '{@link #getResult() <em>Result</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResult()
	 * @generated
	 * @ordered
	 */
	protected BenchOutcome result = RESULT_EDEFAULT;

	/**
	 * This is true if the Result attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean resultESet;

	/**
	 * The cached value of the '{@link #getCovers() <em>Covers</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCovers()
	 * @generated
	 * @ordered
	 */
	protected EList<Phase> covers;

	/**
	 * The default value of the '{@link #getSamples() <em>Samples</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamples()
	 * @generated
	 * @ordered
	 */
	protected static final Integer SAMPLES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSamples() <em>Samples</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamples()
	 * @generated
	 * @ordered
	 */
	protected Integer samples = SAMPLES_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BenchResultImpl()
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
		return ModelPackage.Literals.BENCH_RESULT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOuter()
	{
		return outer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOuter(String newOuter)
	{
		String oldOuter = outer;
		outer = newOuter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_RESULT__OUTER, oldOuter, outer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLumen()
	{
		return lumen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLumen(String newLumen)
	{
		String oldLumen = lumen;
		lumen = newLumen;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_RESULT__LUMEN, oldLumen, lumen));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getInner()
	{
		return inner;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInner(String newInner)
	{
		String oldInner = inner;
		inner = newInner;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_RESULT__INNER, oldInner, inner));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_RESULT__WIRE, oldWire, wire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BenchOutcome getResult()
	{
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResult(BenchOutcome newResult)
	{
		BenchOutcome oldResult = result;
		result = newResult == null ? RESULT_EDEFAULT : newResult;
		boolean oldResultESet = resultESet;
		resultESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_RESULT__RESULT, oldResult, result, !oldResultESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetResult()
	{
		BenchOutcome oldResult = result;
		boolean oldResultESet = resultESet;
		result = RESULT_EDEFAULT;
		resultESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.BENCH_RESULT__RESULT, oldResult, RESULT_EDEFAULT, oldResultESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetResult()
	{
		return resultESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Phase> getCovers()
	{
		if (covers == null)
		{
			covers = new EDataTypeEList<Phase>(Phase.class, this, ModelPackage.BENCH_RESULT__COVERS);
		}
		return covers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getSamples()
	{
		return samples;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSamples(Integer newSamples)
	{
		Integer oldSamples = samples;
		samples = newSamples;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_RESULT__SAMPLES, oldSamples, samples));
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
			case ModelPackage.BENCH_RESULT__OUTER:
				return getOuter();
			case ModelPackage.BENCH_RESULT__LUMEN:
				return getLumen();
			case ModelPackage.BENCH_RESULT__INNER:
				return getInner();
			case ModelPackage.BENCH_RESULT__WIRE:
				return getWire();
			case ModelPackage.BENCH_RESULT__RESULT:
				return getResult();
			case ModelPackage.BENCH_RESULT__COVERS:
				return getCovers();
			case ModelPackage.BENCH_RESULT__SAMPLES:
				return getSamples();
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
			case ModelPackage.BENCH_RESULT__OUTER:
				setOuter((String)newValue);
				return;
			case ModelPackage.BENCH_RESULT__LUMEN:
				setLumen((String)newValue);
				return;
			case ModelPackage.BENCH_RESULT__INNER:
				setInner((String)newValue);
				return;
			case ModelPackage.BENCH_RESULT__WIRE:
				setWire((String)newValue);
				return;
			case ModelPackage.BENCH_RESULT__RESULT:
				setResult((BenchOutcome)newValue);
				return;
			case ModelPackage.BENCH_RESULT__COVERS:
				getCovers().clear();
				getCovers().addAll((Collection<? extends Phase>)newValue);
				return;
			case ModelPackage.BENCH_RESULT__SAMPLES:
				setSamples((Integer)newValue);
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
			case ModelPackage.BENCH_RESULT__OUTER:
				setOuter(OUTER_EDEFAULT);
				return;
			case ModelPackage.BENCH_RESULT__LUMEN:
				setLumen(LUMEN_EDEFAULT);
				return;
			case ModelPackage.BENCH_RESULT__INNER:
				setInner(INNER_EDEFAULT);
				return;
			case ModelPackage.BENCH_RESULT__WIRE:
				setWire(WIRE_EDEFAULT);
				return;
			case ModelPackage.BENCH_RESULT__RESULT:
				unsetResult();
				return;
			case ModelPackage.BENCH_RESULT__COVERS:
				getCovers().clear();
				return;
			case ModelPackage.BENCH_RESULT__SAMPLES:
				setSamples(SAMPLES_EDEFAULT);
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
			case ModelPackage.BENCH_RESULT__OUTER:
				return OUTER_EDEFAULT == null ? outer != null : !OUTER_EDEFAULT.equals(outer);
			case ModelPackage.BENCH_RESULT__LUMEN:
				return LUMEN_EDEFAULT == null ? lumen != null : !LUMEN_EDEFAULT.equals(lumen);
			case ModelPackage.BENCH_RESULT__INNER:
				return INNER_EDEFAULT == null ? inner != null : !INNER_EDEFAULT.equals(inner);
			case ModelPackage.BENCH_RESULT__WIRE:
				return WIRE_EDEFAULT == null ? wire != null : !WIRE_EDEFAULT.equals(wire);
			case ModelPackage.BENCH_RESULT__RESULT:
				return isSetResult();
			case ModelPackage.BENCH_RESULT__COVERS:
				return covers != null && !covers.isEmpty();
			case ModelPackage.BENCH_RESULT__SAMPLES:
				return SAMPLES_EDEFAULT == null ? samples != null : !SAMPLES_EDEFAULT.equals(samples);
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
		result.append(" (outer: ");
		result.append(outer);
		result.append(", lumen: ");
		result.append(lumen);
		result.append(", inner: ");
		result.append(inner);
		result.append(", wire: ");
		result.append(wire);
		result.append(", result: ");
		if (resultESet) result.append(result); else result.append("<unset>");
		result.append(", covers: ");
		result.append(covers);
		result.append(", samples: ");
		result.append(samples);
		result.append(')');
		return result.toString();
	}

} //BenchResultImpl
